/** What is out of date: the answer in a sentence, then thing by thing. */
import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { useMay } from '../organisation/may.ts';
import { Views } from '../saved-view/views.tsx';
import { strings } from '../strings/due-list.ts';
import { formatDay } from '../ui/calendar.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { overdueSentence, unknownSentence } from './answer-sentence.ts';
import { AsAt } from './as-at.tsx';
import { Bulk } from './bulk.tsx';
import { ChoosingContext, useNewChoosing } from './choosing.ts';
import { countsQuery } from './due.query.ts';
import { DueFilters } from './due-filters.tsx';
import { DueLists } from './due-lists.tsx';
import { type DueSearch, isFiltered, readDueSearch } from './due-search.ts';
import { Samples } from './samples.tsx';
import './due-list.css';

const route = getRouteApi('/due');

export function DuePage() {
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const may = useMay();
  const choosing = useNewChoosing();
  const change = (next: Partial<DueSearch>) =>
    void navigate({ search: (now) => ({ ...now, ...next }), replace: true, resetScroll: false });
  return (
    <>
      <PageHeader
        title={strings.title}
        acts={
          <>
            <AsAt day={search.asAt} onChoose={(asAt) => change({ asAt })} />
            <button type="button" onClick={() => window.print()}>
              {strings.print}
            </button>
          </>
        }
      >
        <Answer asAt={search.asAt} />
      </PageHeader>
      <section aria-labelledby="list-heading">
        <h2 id="list-heading">{strings.list}</h2>
        <DueFilters search={search} onChange={change} />
        <Views
          page="due"
          search={search}
          onOpen={(view) =>
            void navigate({
              search: readDueSearch({ asAt: search.asAt, ...view?.filters, view: view?.id }),
              replace: true,
              resetScroll: false,
            })
          }
        />
        <ChoosingContext value={may.recordFacts ? choosing : null}>
          <DueLists search={search} onChange={change} />
        </ChoosingContext>
        {may.recordFacts && <Bulk choosing={choosing} />}
      </section>
      {!isFiltered(search) && <Samples asAt={search.asAt} />}
    </>
  );
}

/** Empty until it is known; an answer that failed to come is told by the list. */
function Answer({ asAt }: { asAt: string | undefined }) {
  const { data } = useQuery(countsQuery(asAt));
  if (!data) return <p className="answer">&nbsp;</p>;
  const unknown = unknownSentence(data.counts, data.matters.unknown);
  return (
    <p className="answer" aria-live="polite">
      {overdueSentence(data.counts, data.vesselsOverdue, data.matters.overdue)}{' '}
      {unknown && <a href="#unknown">{unknown}</a>}{' '}
      <span className={asAt ? 'as-at' : ''}>{strings.asAtDay(formatDay(data.asOf))}</span>
    </p>
  );
}
