/** A visit at the desk: place by place, what is open there and what is to be written, until it is complete and sealed. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { useOnceKey } from '../item/use-once-key.ts';
import { useMay } from '../organisation/may.ts';
import { checkWords, measureWords, purposeWords, reasonWords, strings, waterWords } from '../strings/survey-visit.ts';
import { formatDay, readersToday } from '../ui/calendar.ts';
import { Caution } from '../ui/caution.tsx';
import { Failed } from '../ui/failed.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { ChangeVisit } from './change-visit.tsx';
import { focusLine } from './focus-after.ts';
import { OpenMatters } from './open-matters.tsx';
import { PlaceForm } from './place-form.tsx';
import { PlacePictures } from './place-pictures.tsx';
import { Sealed } from './sealed.tsx';
import { completeVisit, type Stop, type Visit, visitQuery, type Walk, walkQuery } from './visit.query.ts';
import './survey-visit.css';

const route = getRouteApi('/visits/$visitId');
const { one } = strings;

export function VisitPage() {
  const { visitId } = route.useParams();
  const visit = useQuery(visitQuery(visitId));
  const walk = useQuery(walkQuery(visitId));
  const may = useMay();
  if (isStatus(visit.error, 404)) return <NotHere />;
  if (visit.isPending || walk.isPending) return <Waiting>{one.waiting}</Waiting>;
  if (!visit.data || !walk.data) {
    const again = () => void Promise.all([visit.refetch(), walk.refetch()]);
    return <Failed what={one.failed} why={whyItFailed(visit.error ?? walk.error)} again={again} />;
  }
  const { data, version } = visit.data;
  const writing = data.state === 'open' && may.survey;
  const { purpose, water, place, vessel, startedOn } = data;
  return (
    <>
      <PageHeader title={one.title(vessel.name, formatDay(startedOn))}>
        <p>
          {sentenceCase(one.facts(purposeWords[purpose], waterWords[water], place))}.{' '}
          {data.persons.map(({ name, qualification }) => [name, qualification].filter(Boolean).join(', ')).join('; ')}
        </p>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId: vessel.id }} className="vessel-name">
            {vessel.name}
          </Link>
        </p>
      </PageHeader>
      {writing && <ChangeVisit key={version} visit={data} version={version} />}
      {writing && <Caution>{one.closed}</Caution>}
      {data.state === 'completed' ? <Sealed visit={data} /> : <Left visit={data} version={version} walk={walk.data} />}
      <section aria-labelledby="route">
        <h2 id="route">{one.route}</h2>
        {walk.data.stops.map((stop) => (
          <StopSection key={stop.zone} visit={data} stop={stop} writing={writing} />
        ))}
      </section>
    </>
  );
}

function Left({ visit, version, walk }: { visit: Visit; version: string; walk: Walk }) {
  const may = useMay();
  const queries = useQueryClient();
  const once = useOnceKey();
  const completing = useMutation({
    mutationFn: () => completeVisit(visit.id, version, readersToday(), once([visit.id, version])),
    onSuccess: () => readAnew(queries),
  });
  const [missing] = walk.unanswered;
  const places = [...new Set(walk.unanswered.map(({ zone }) => zone))];
  const nameOf = (zone: string) => walk.stops.find((stop) => stop.zone === zone)?.name ?? zone;
  return (
    <section className="left" aria-label={one.complete}>
      <p className="answer" aria-live="polite">
        {walk.unanswered.length === 0 ? one.nothingLeft : one.left(walk.unanswered.length)}{' '}
        {places.map((zone) => (
          <a key={zone} href={`#at-${zone}`}>
            {nameOf(zone)}
          </a>
        ))}
      </p>
      {may.survey && (
        <p className="acts">
          <button
            type="button"
            className={walk.unanswered.length === 0 ? 'first' : undefined}
            data-finish
            aria-disabled={walk.unanswered.length > 0}
            disabled={completing.isPending}
            onClick={() => (missing ? goTo(missing.zone) : completing.mutate())}
          >
            {completing.isPending ? one.completing : one.complete}
          </button>
        </p>
      )}
      {completing.isError && <p role="alert">{whyItFailed(completing.error)}</p>}
    </section>
  );
}

/** To the first line of the place. */
function goTo(zone: string): void {
  focusLine(document.querySelector<HTMLElement>(`#at-${zone} [data-line]`) ?? undefined);
}

function StopSection({ visit, stop, writing }: { visit: Visit; stop: Stop; writing: boolean }) {
  const { answer, readings } = stop;
  const said = answer && [one.answered[answer.answer], answer.reason && reasonWords[answer.reason], answer.words];
  return (
    <section className="stop" id={`at-${stop.zone}`} aria-label={stop.name}>
      <h3>
        {stop.name} {said && <span className="stop-answer">{said.filter(Boolean).join(' · ')}</span>}
      </h3>
      <div>
        <OpenMatters visit={visit} stop={stop} writing={writing} />
        {readings.length > 0 && (
          <ul className="readings">
            {readings.map(({ id, point, measure, value, words, check, limit }) => (
              <li key={id}>
                {point}: {measureWords[measure]} <strong>{value ?? '—'}</strong>{' '}
                <span className={check === 'in_check' ? 'sub' : 'sub out-of-check'}>
                  {[checkWords[check], words].filter(Boolean).join(' · ')}
                </span>
                {limit && <LimitWords limit={limit} />}
              </li>
            ))}
            {readings.some(({ measure }) => measure === 'moisture') && <li className="quiet">{one.moisture}</li>}
          </ul>
        )}
        <PlacePictures visit={visit} stop={stop} writing={writing} />
        {writing && <PlaceForm visit={visit} stop={stop} />}
      </div>
    </section>
  );
}

type Limit = NonNullable<Stop['readings'][number]['limit']>;

/** What a publication asks of the point: quiet where it is kept, marked where it is not. */
function LimitWords({ limit: { within, inWords, source } }: { limit: Limit }) {
  return (
    <p className={within ? 'sub' : 'sub outside-limit'}>
      {!within && <span className="standing overdue">{one.outside}</span>}{' '}
      <a href={source.address} rel="noreferrer">
        {source.publication}
      </a>
      : {inWords}.
    </p>
  );
}
