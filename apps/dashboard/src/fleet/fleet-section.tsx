/** Who needs somebody first: said, then drawn. */
import { useQuery } from '@tanstack/react-query';
import { whyItFailed } from '../api/api-problem.ts';
import { strings } from '../strings/fleet.ts';
import { Failed } from '../ui/failed.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { fleetQuery } from './fleet.query.ts';
import { inOrderOfNeed } from './fleet-order.ts';
import { Horizon } from './horizon.tsx';
import { HorizonTable } from './horizon-table.tsx';
import { needSentence } from './need-sentence.ts';

type Props = { asAt: string | undefined; asTable: boolean; onTurn: (asTable: boolean) => void };

export function FleetSection({ asAt, asTable, onTurn }: Props) {
  const { data, error, isPending, refetch } = useQuery(fleetQuery(asAt));
  if (isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (!data) return <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />;
  if (data.items.length === 0) return <p className="empty quiet">{strings.empty}</p>;
  const rows = inOrderOfNeed(data.items);
  const need = needSentence(rows, data.asOf);
  return (
    <section className="fleet-section" aria-labelledby="fleet-heading">
      <header className="section-header">
        <div>
          <h2 id="fleet-heading">{strings.heading}</h2>
          {need && (
            <p className="quiet">
              <span className="vessel-name">{need.vessel}</span>
              {need.rest}
            </p>
          )}
        </div>
        <button type="button" className="word" onClick={() => onTurn(!asTable)}>
          {asTable ? strings.asPicture : strings.asTable}
        </button>
      </header>
      {asTable ? (
        <HorizonTable rows={rows} asOf={data.asOf} asAt={asAt} />
      ) : (
        <Horizon rows={rows} asOf={data.asOf} asAt={asAt} />
      )}
    </section>
  );
}
