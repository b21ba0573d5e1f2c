/** What was found across the fleet and is not yet put right. */
import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { strings } from '../strings/finding.ts';
import { hazardWords, tradeWords, urgencyWords } from '../strings/finding-codes.ts';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { type Finding, findingsQuery } from './finding.query.ts';
import { FindingLine } from './finding-line.tsx';
import { FindingsFilters } from './findings-filters.tsx';
import { type FindingsSearch, type Group, isFiltered, toFindingsQuery } from './findings-search.ts';
import './finding.css';

const route = getRouteApi('/findings');
const { list } = strings;

export function FindingsPage() {
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const change = (next: Partial<FindingsSearch>) =>
    void navigate({ search: (now: FindingsSearch) => ({ ...now, ...next }), replace: true, resetScroll: false });
  return (
    <>
      <PageHeader
        title={TITLE[search.show ?? 'open']}
        acts={
          <button type="button" onClick={() => window.print()}>
            {strings.list.print}
          </button>
        }
      >
        {search.show === undefined && <Answer />}
        {search.show === 'week' && <p className="answer">{list.weekHow}</p>}
      </PageHeader>
      <FindingsFilters search={search} onChange={change} />
      <Lists search={search} />
    </>
  );
}

/** Of the whole fleet, whatever is filtered. */
function Answer() {
  const { data, hasNextPage } = useInfiniteQuery(findingsQuery({ open: 'true' }));
  if (!data || hasNextPage) return <p className="answer">&nbsp;</p>;
  const all = data.pages.flatMap(({ items }) => items);
  const urgent = all.filter(({ urgency }) => urgency === 'before_use').length;
  return <p className="answer">{list.answer(all.length, urgent)}</p>;
}

function Lists({ search }: { search: FindingsSearch }) {
  const { data, error, isPending, refetch, hasNextPage, fetchNextPage, isFetchingNextPage } = useInfiniteQuery(
    findingsQuery(toFindingsQuery(search)),
  );
  if (isPending) return <Waiting>{list.waiting}</Waiting>;
  if (!data) return <Failed what={list.failed} why={whyItFailed(error)} again={refetch} />;
  const findings = data.pages.flatMap(({ items }) => items);
  if (findings.length === 0) return <Nothing filtered={isFiltered(search) || search.show !== undefined} />;
  const groups = Map.groupBy(findings, (finding) =>
    headingOf(finding, search.group ?? (search.show === 'week' ? 'trade' : 'urgency')),
  );
  return (
    <>
      {[...groups].map(([heading, some]) => (
        <section key={heading} className="finding-group" aria-label={heading}>
          <h2>
            {heading} <span className="heading-count">{some.length}</span>
          </h2>
          <Ledger caption={list.caption} columns={Object.values(COLUMNS)} className="findings">
            {some.map((finding) => (
              <FindingLine key={finding.id} finding={finding} />
            ))}
          </Ledger>
        </section>
      ))}
      {hasNextPage && (
        <button type="button" className="more" disabled={isFetchingNextPage} onClick={() => void fetchNextPage()}>
          {list.more}
        </button>
      )}
    </>
  );
}

const TITLE = { open: list.title, week: list.titleWeek, ended: list.titleEnded };

const { where: _, ...COLUMNS } = list.columns;

function headingOf({ urgency, hazard, trade, vessel }: Finding, group: Group): string {
  switch (group) {
    case 'urgency':
      return sentenceCase(urgencyWords[urgency]);
    case 'hazard':
      return sentenceCase(hazardWords[hazard]);
    case 'trade':
      return trade ? sentenceCase(tradeWords[trade]) : list.noTrade;
    case 'vessel':
      return vessel.name;
  }
}

function Nothing({ filtered }: { filtered: boolean }) {
  return (
    <div className="empty">
      <p className="voice">{filtered ? list.nothing : list.nothingYet}</p>
      <p className="quiet">{filtered ? list.nothingHow : list.nothingYetHow}</p>
    </div>
  );
}
