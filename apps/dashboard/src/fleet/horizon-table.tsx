/** The horizon as numbers, for whoever would rather read than look. */
import { Link } from '@tanstack/react-router';
import { countAll, countBinding } from '../due-list/counts.ts';
import { strings } from '../strings/fleet.ts';
import { ageInShort } from '../ui/age.ts';
import { addMonths, daysBetween } from '../ui/calendar.ts';
import { Day } from '../ui/day.tsx';
import { type FleetRow, openFindings } from './fleet.query.ts';

const ENDS = [3, 6, 12, 24] as const;

export function HorizonTable({
  rows,
  asOf,
  asAt,
}: {
  rows: readonly FleetRow[];
  asOf: string;
  asAt: string | undefined;
}) {
  return (
    <div className="scrolls">
      <table className="horizon-table">
        <caption className="out-of-sight">{strings.tableCaption}</caption>
        <thead>
          <tr>
            {strings.columns.map((column, index) => (
              <th key={column} scope="col" className={index === 0 ? '' : 'number'}>
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.vesselId}>
              <th scope="row">
                <Link
                  to="/vessels/$vesselId"
                  params={{ vesselId: row.vesselId }}
                  search={{ asAt }}
                  className="vessel-name"
                >
                  {row.name}
                </Link>
              </th>
              <td className="number">{openFindings(row) || '–'}</td>
              <td className="number">{row.findings.before_use || '–'}</td>
              <td className="number">{countAll(row.counts.overdue) || '–'}</td>
              <td className="number">{countBinding(row.counts.overdue) || '–'}</td>
              <td className="number">
                {row.oldestOverdueAfter ? ageInShort(daysBetween(row.oldestOverdueAfter, asOf)) : '–'}
              </td>
              <td className="number">{countAll(row.counts.unknown) || '–'}</td>
              <td className="number">{row.nextOverdueAfter ? <Day on={row.nextOverdueAfter} /> : '–'}</td>
              {byPeriod(row, asOf).map(({ end, count }) => (
                <td key={end} className="number">
                  {count || '–'}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function byPeriod(row: FleetRow, asOf: string): { end: number; count: number }[] {
  let from = asOf;
  return ENDS.map((end) => {
    const to = addMonths(asOf, end);
    const inside = row.marks.filter((mark) => mark.on >= from && mark.on < to);
    from = to;
    return { end, count: inside.reduce((sum, mark) => sum + mark.things.length, 0) };
  });
}
