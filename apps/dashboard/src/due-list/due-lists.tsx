/** The dated things, soonest first; then, apart, what is suspended and what has no date to go by. */
import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { strings } from '../strings/due-list.ts';
import { Failed } from '../ui/failed.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { countAll } from './counts.ts';
import { countsQuery, type DueQuery, dueQuery } from './due.query.ts';
import { DEFAULT_UNTIL, type DueSearch, isFiltered, toDueQuery } from './due-search.ts';
import { DueTable } from './due-table.tsx';

type Props = { search: DueSearch; onChange: (next: Partial<DueSearch>) => void };

export function DueLists({ search, onChange }: Props) {
  const { horizonDays: _, ...undated } = toDueQuery({ ...search, standing: 'unknown' });
  const { standing: __, ...suspended } = undated;
  const wantsDated = search.standing !== 'unknown';
  const wantsUndated = search.standing === undefined || search.standing === 'unknown';
  const open = { key: search.open, onOpen: (key: string | undefined) => onChange({ open: key }) };
  return (
    <>
      {wantsDated && (
        <List filter={toDueQuery(search)} asAt={search.asAt} open={open} empty={<Nothing search={search} />} />
      )}
      {search.standing === undefined && (
        <Apart group="suspended" filter={{ ...suspended, suspended: 'true' }} search={search} open={open} />
      )}
      {wantsUndated && <Apart group="unknown" filter={undated} search={search} open={open} />}
    </>
  );
}

type Open = { key: string | undefined; onOpen: (key: string | undefined) => void };

type Group = 'suspended' | 'unknown';

/** A group of its own under the dated things, with how many there are of it in all; left out where there are none. */
function Apart(props: { group: Group; filter: DueQuery; search: DueSearch; open: Open }) {
  const { group, filter, search, open } = props;
  const told = useQuery(countsQuery(search.asAt)).data;
  const counts = told?.counts;
  const found = group === 'unknown' ? (told?.matters.unknown ?? 0) : 0;
  const all = counts ? countAll(counts[group]) + found : 0;
  if (all === 0) return search.standing === group && counts ? <Nothing search={search} /> : null;
  return (
    <section className="no-date" aria-labelledby={group}>
      <h2 id={group}>
        {strings[group].heading}
        {!isFiltered({ ...search, standing: undefined }) && <span className="heading-count">{all}</span>}
      </h2>
      <p className="quiet">{strings[group].explain}</p>
      <List
        filter={filter}
        asAt={search.asAt}
        open={open}
        empty={<p className="empty quiet">{strings.nothingMatches}</p>}
      />
    </section>
  );
}

function List(props: { filter: DueQuery; asAt: string | undefined; open: Open; empty: ReactNode }) {
  const { data, error, isPending, refetch, fetchNextPage, hasNextPage, isFetchingNextPage } = useInfiniteQuery(
    dueQuery(props.filter),
  );
  if (isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (!data) return <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />;
  const rows = data.pages.flatMap((page) => page.items);
  // Without a standing asked for, the API puts what has no date last; here it has a place of its own.
  const shown = props.filter.standing === 'unknown' ? rows : rows.filter((row) => row.standing !== 'unknown');
  if (shown.length === 0) return props.empty;
  const more = hasNextPage && shown.length === rows.length;
  return (
    <>
      <DueTable rows={shown} asAt={props.asAt} open={props.open.key} onOpen={props.open.onOpen} />
      {more && (
        <button type="button" className="more" disabled={isFetchingNextPage} onClick={() => void fetchNextPage()}>
          {isFetchingNextPage ? strings.showing : strings.more}
        </button>
      )}
    </>
  );
}

function Nothing({ search }: { search: DueSearch }) {
  const counts = useQuery(countsQuery(search.asAt)).data?.counts;
  const known = counts && Object.values(counts).reduce((sum, each) => sum + countAll(each), 0);
  const [what, how] = known === 0 ? [strings.nothingYet, strings.nothingYetHow] : wordsFor(search);
  return (
    <div className="empty">
      <p className="voice">{what}</p>
      {how && <p className="quiet">{how}</p>}
    </div>
  );
}

function wordsFor(search: DueSearch): [string, string] {
  if (isFiltered(search)) return [strings.nothingMatches, strings.nothingMatchesHow];
  return [strings.nothingDue(strings.until[search.until ?? DEFAULT_UNTIL]), ''];
}
