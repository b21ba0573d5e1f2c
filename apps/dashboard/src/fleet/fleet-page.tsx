/** The fleet board: who needs somebody first, said, then drawn. */
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { AsAt } from '../due-list/as-at.tsx';
import { useMay } from '../organisation/may.ts';
import { Views } from '../saved-view/views.tsx';
import { strings as dueStrings } from '../strings/due-list.ts';
import { strings } from '../strings/fleet.ts';
import { strings as newVesselStrings } from '../strings/new-vessel.ts';
import { formatDay } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { fleetQuery } from './fleet.query.ts';
import { inOrderOfNeed } from './fleet-order.ts';
import { type FleetSearch, readFleetSearch } from './fleet-search.ts';
import { Horizon } from './horizon.tsx';
import type { Zoom } from './horizon-scale.ts';
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
      <Views
        page="fleet"
        search={search}
        onOpen={(view) =>
          void navigate({
            search: readFleetSearch({ asAt: search.asAt, ...view?.filters, view: view?.id }),
            replace: true,
          })
        }
      />
      <Board search={search} onChange={change} />
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
      <span className={asAt ? 'as-at' : ''}>{dueStrings.asAtDay(formatDay(data.asOf))}</span>{' '}
      {data.items.length > 1 && strings.whyThisOrder}
    </p>
  );
}

type BoardProps = { search: FleetSearch; onChange: (next: Partial<FleetSearch>) => void };

function Board({ search: { asAt, fleet, months }, onChange }: BoardProps) {
  const { data, error, isPending, refetch } = useQuery(fleetQuery(asAt));
  if (isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (!data) return <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />;
  if (data.items.length === 0) return <NoVessels />;
  const { season, asOf } = data;
  const rows = inOrderOfNeed(data.items);
  if (fleet === 'table') return <HorizonTable rows={rows} asOf={asOf} asAt={asAt} />;
  const onZoom = (next: Zoom) => onChange({ months: next });
  return <Horizon rows={rows} season={season} asOf={asOf} asAt={asAt} months={months} onZoom={onZoom} />;
}

function NoVessels() {
  const may = useMay();
  return (
    <div className="empty">
      <p className="voice">{strings.empty}</p>
      <p className="quiet">{strings.emptyHow}</p>
      {may.keepRegister && (
        <Link to="/vessels/new" className="button first">
          {newVesselStrings.enter}
        </Link>
      )}
    </div>
  );
}
