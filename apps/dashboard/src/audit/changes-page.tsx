/** Who changed what: filters in the address, the latest first, each line opening to before and after. */
import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/audit.ts';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { ChangeLine } from './change-line.tsx';
import { type Change, changesQuery } from './changes.query.ts';
import { ChangesFilters } from './changes-filters.tsx';
import './audit.css';

const route = getRouteApi('/changes');

export function ChangesPage() {
  const may = useMay();
  if (!may.readAudit) return <Forbidden permission="readAudit" />;
  return <Changes />;
}

function Changes() {
  const search = route.useSearch();
  const { data, error, isPending, refetch, hasNextPage, fetchNextPage, isFetchingNextPage } = useInfiniteQuery(
    changesQuery(search),
  );
  const changes = data?.pages.flatMap(({ items }) => items) ?? [];
  return (
    <>
      <PageHeader title={strings.title} acts={<TakeAway />}>
        <p>{strings.intro}</p>
      </PageHeader>
      <ChangesFilters search={search} />
      {isPending && <Waiting>{strings.waiting}</Waiting>}
      {!isPending && !data && <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />}
      {data && changes.length === 0 && (
        <div className="empty">
          <p className="voice">{strings.empty}</p>
        </div>
      )}
      {changes.length > 0 && <List changes={changes} />}
      {hasNextPage && (
        <button type="button" disabled={isFetchingNextPage} onClick={() => void fetchNextPage()}>
          {strings.older}
        </button>
      )}
    </>
  );
}

function TakeAway() {
  return (
    <a href="/v1/audit/export" download="changes.ndjson" className="button" title={strings.exportHow}>
      {strings.export}
    </a>
  );
}

function List({ changes }: { changes: readonly Change[] }) {
  const { when, who, what, about } = strings.columns;
  return (
    <Ledger caption={strings.caption} columns={[when, who, what, about]} className="changes" doing>
      {changes.map((change) => (
        <ChangeLine key={change.id} change={change} />
      ))}
    </Ledger>
  );
}
