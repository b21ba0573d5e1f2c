/** The fleet board: who needs somebody first, said, then drawn. */
import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { AsAt } from '../due-list/as-at.tsx';
import { strings as dueStrings } from '../strings/due-list.ts';
import { strings } from '../strings/fleet.ts';
import { formatDay } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { fleetQuery } from './fleet.query.ts';
import { inOrderOfNeed } from './fleet-order.ts';
import type { FleetSearch } from './fleet-search.ts';
import { Horizon } from './horizon.tsx';
import { HorizonTable } from './horizon-table.tsx';
import { needSentence } from './need-sentence.ts';

const route = getRouteApi('/');

export function FleetPage() {
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const change = (next: Partial<FleetSearch>) =>
    void navigate({ search: (now) => ({ ...now, ...next }), replace: true, resetScroll: false });
  const asTable = search.fleet === 'table';
  return (
    <>
      <PageHeader
        title={strings.heading}
        acts={
          <>
            <AsAt day={search.asAt} onChoose={(asAt) => change({ asAt })} />
            <button type="button" onClick={() => change({ fleet: asTable ? undefined : 'table' })}>
              {asTable ? strings.asPicture : strings.asTable}
            </button>
            <button type="button" onClick={() => window.print()}>
              {dueStrings.print}
            </button>
          </>
        }
      >
        <Need asAt={search.asAt} />
      </PageHeader>
      <Board asAt={search.asAt} asTable={asTable} />
    </>
  );
}

/** Empty until it is known; an answer that failed to come is told by the board. */
function Need({ asAt }: { asAt: string | undefined }) {
  const { data } = useQuery(fleetQuery(asAt));
  if (!data) return <p>&nbsp;</p>;
  const need = needSentence(inOrderOfNeed(data.items), data.asOf);
  return (
    <p aria-live="polite">
      {need && (
        <>
          <span className="vessel-name">{need.vessel}</span>
          {need.rest}{' '}
        </>
      )}
      <span className={asAt ? 'as-at' : ''}>{dueStrings.asAtDay(formatDay(data.asOf))}</span>
    </p>
  );
}

function Board({ asAt, asTable }: { asAt: string | undefined; asTable: boolean }) {
  const { data, error, isPending, refetch } = useQuery(fleetQuery(asAt));
  if (isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (!data) return <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />;
  if (data.items.length === 0) return <p className="empty quiet">{strings.empty}</p>;
  const rows = inOrderOfNeed(data.items);
  if (asTable) return <HorizonTable rows={rows} asOf={data.asOf} asAt={asAt} />;
  return <Horizon rows={rows} asOf={data.asOf} asAt={asAt} />;
}
