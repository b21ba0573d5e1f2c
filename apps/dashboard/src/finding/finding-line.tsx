/** One finding in a list: how urgent, what, where, and how it stands. */
import { Link } from '@tanstack/react-router';
import { strings } from '../strings/finding.ts';
import { nameOfZone } from '../strings/zones.ts';
import { formatDay } from '../ui/calendar.ts';
import { Day } from '../ui/day.tsx';
import type { Finding } from './finding.query.ts';
import { Urgency } from './urgency.tsx';

const { columns } = strings.list;

export function FindingLine({ finding }: { finding: Finding }) {
  const { id, vessel, what, zone, due, reads } = finding;
  return (
    <tr>
      <td data-of={columns.standing}>
        <Urgency finding={finding} />
      </td>
      <td data-of={columns.what} className="finding-what">
        <Link to="/findings/$findingId" params={{ findingId: id }}>
          {what}
        </Link>
        <span className="sub">{nameOfZone(zone)}</span>
      </td>
      <td data-of={columns.vessel}>
        <Link to="/vessels/$vesselId" params={{ vesselId: vessel.id }} className="vessel-name">
          {vessel.name}
        </Link>
      </td>
      <td data-of={columns.due}>
        {due?.on ? <Day on={due.on} /> : <span className="quiet">{due ? due.because : strings.list.ended}</span>}
      </td>
      <td data-of={columns.reads}>{readable(reads)}</td>
    </tr>
  );
}

/** Days in the wording are ISO: read as everywhere on the screen. */
export function readable(words: string): string {
  return words.replaceAll(/\d{4}-\d{2}-\d{2}/g, (day) => formatDay(day));
}
