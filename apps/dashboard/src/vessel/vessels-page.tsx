/** The register, plainly: each vessel and how her things stand. */
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { countAdvice, countAll, countBinding } from '../due-list/counts.ts';
import { type FleetRow, fleetQuery } from '../fleet/fleet.query.ts';
import { useMay } from '../organisation/may.ts';
import type { StandingCode } from '../strings/codes.ts';
import { strings as newVesselStrings } from '../strings/new-vessel.ts';
import { strings } from '../strings/vessel.ts';
import { Day } from '../ui/day.tsx';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { particularsInShort } from './particulars.ts';
import './vessel.css';

const { register } = strings;
const { columns } = register;

export function VesselsPage() {
  const may = useMay();
  const { data, error, isPending, refetch } = useQuery(fleetQuery(undefined));
  return (
    <>
      <PageHeader title={register.title} acts={may.keepRegister && <Enter />}>
        {data && data.items.length > 0 && <p>{register.answer(data.items.length)}</p>}
      </PageHeader>
      {isPending && <Waiting>{register.waiting}</Waiting>}
      {!isPending && !data && <Failed what={register.failed} why={whyItFailed(error)} again={refetch} />}
      {data && (data.items.length === 0 ? <Empty /> : <Register rows={data.items} />)}
    </>
  );
}

function Enter() {
  return (
    <Link to="/vessels/new" className="button first">
      {newVesselStrings.enter}
    </Link>
  );
}

function Empty() {
  return (
    <div className="empty">
      <p className="voice">{register.empty}</p>
      <p className="quiet">{register.emptyHow}</p>
    </div>
  );
}

function Register({ rows }: { rows: readonly FleetRow[] }) {
  return (
    <div className="scrolls">
      <table className="register">
        <caption className="out-of-sight">{register.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.vessel}</th>
            {[columns.law, columns.insurer, columns.advice, columns.due, columns.unknown, columns.inDate].map(
              (column) => (
                <th key={column} scope="col" className="number">
                  {column}
                </th>
              ),
            )}
            <th scope="col">{columns.next}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <RegisterLine key={row.vesselId} row={row} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function RegisterLine({ row }: { row: FleetRow }) {
  const { overdue, due, unknown, in_date: inDate } = row.counts;
  return (
    <tr>
      <th scope="row">
        <Link to="/vessels/$vesselId" params={{ vesselId: row.vesselId }} className="vessel-name">
          {row.name}
        </Link>
        <span className="sub">{particularsInShort(row)}</span>
      </th>
      <Count of={columns.law} count={countBinding(overdue)} standing="overdue" />
      <Count of={columns.insurer} count={overdue.insurer} standing="overdue" />
      <Count of={columns.advice} count={countAdvice(overdue)} standing="overdue" />
      <Count of={columns.due} count={countAll(due)} standing="due" />
      <Count of={columns.unknown} count={countAll(unknown)} standing="unknown" />
      <Count of={columns.inDate} count={countAll(inDate)} standing="in_date" />
      <td data-of={columns.next}>{row.nextOverdueAfter ? <Day on={row.nextOverdueAfter} /> : '–'}</td>
    </tr>
  );
}

function Count({ of, count, standing }: { of: string; count: number; standing: StandingCode }) {
  return (
    <td className={count === 0 ? 'number none' : 'number'} data-of={of}>
      {count === 0 ? <span className="quiet">–</span> : <span className={`standing ${standing}`}>{count}</span>}
    </td>
  );
}
