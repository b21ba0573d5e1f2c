/** One finding: how it stands, what comes next as verbs, and its whole story. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { BeforeAfter } from '../evidence/before-after.tsx';
import { NotHere } from '../frame/not-here.tsx';
import { useMay } from '../organisation/may.ts';
import { cautionForFinding } from '../strings/cautions.ts';
import { strings } from '../strings/finding.ts';
import { Caution } from '../ui/caution.tsx';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { type Act, actsOf, usualNext } from './act.ts';
import { ActForm } from './act-form.tsx';
import { type Finding, findingQuery, storyQuery } from './finding.query.ts';
import { FindingFacts } from './finding-facts.tsx';
import { readable } from './finding-line.tsx';
import { Story } from './story.tsx';
import './finding.css';

const route = getRouteApi('/findings/$findingId');
const { one, acts } = strings;

export function FindingPage() {
  const { findingId } = route.useParams();
  const { data, error, isPending, refetch } = useQuery(findingQuery(findingId));
  const story = useQuery(storyQuery(findingId)).data ?? [];
  if (isStatus(error, 404)) return <NotHere />;
  if (isPending) return <Waiting>{one.waiting}</Waiting>;
  if (!data) return <Failed what={one.failed} why={whyItFailed(error)} again={refetch} />;
  const { data: finding, version } = data;
  const caution = cautionForFinding(finding);
  return (
    <>
      <PageHeader title={finding.what}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId: finding.vessel.id }} className="vessel-name">
            {finding.vessel.name}
          </Link>
          , {one.number(finding.number).toLowerCase()}
        </p>
        <p className="answer">{readable(finding.reads)}.</p>
      </PageHeader>
      {caution && <Caution>{caution}</Caution>}
      <Next finding={finding} version={version} />
      <FindingFacts finding={finding} />
      <BeforeAfter entries={story} />
      <section aria-labelledby="story">
        <h2 id="story">{one.story}</h2>
        <Story entries={story} />
      </section>
    </>
  );
}

/** Every verb that is open to this person; one form at a time, by the address. */
function Next({ finding, version }: { finding: Finding; version: string }) {
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const all = actsOf(finding, useMay());
  const act = all.find((each) => each === search.do);
  const first = usualNext(finding, all);
  const open = (next: Act | undefined) =>
    void navigate({ search: next ? { do: next } : {}, replace: true, resetScroll: false });
  return (
    <section aria-labelledby="next" className="next">
      <h2 id="next">{one.next}</h2>
      {all.length === 0 && <p className="quiet">{one.nothingToDo}</p>}
      {act ? (
        <ActForm key={act} act={act} finding={finding} version={version} onDone={() => open(undefined)} />
      ) : (
        <p className="acts">
          {all.map((each) => (
            <button
              key={each}
              type="button"
              className={each === first ? 'first' : undefined}
              onClick={() => open(each)}
            >
              {acts[each]}
            </button>
          ))}
        </p>
      )}
    </section>
  );
}
