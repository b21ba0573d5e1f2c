/** An open finding among the things of its place, or among what must happen before anybody uses her. */
import { Link } from '@tanstack/react-router';
import type { Finding } from '../finding/finding.query.ts';
import { readable } from '../finding/finding-line.tsx';
import { Urgency } from '../finding/urgency.tsx';
import { tradeWords } from '../strings/finding-codes.ts';
import { nameOfZone } from '../strings/zones.ts';
import { Day } from '../ui/day.tsx';

type Props = { finding: Finding; withPlace?: boolean };

export function FindingEntry({ finding, withPlace }: Props) {
  const { id, what, reads, trade, due, zone } = finding;
  return (
    <li className="obligation-line finding-entry">
      <Urgency finding={finding} />
      <span className="obligation-words">
        <Link to="/findings/$findingId" params={{ findingId: id }} className="opens">
          {what}
        </Link>
        <span className="sub">
          {[withPlace && nameOfZone(zone), readable(reads), trade && tradeWords[trade]].filter(Boolean).join(' · ')}
        </span>
      </span>
      <span className="obligation-day">{due?.on && <Day on={due.on} />}</span>
    </li>
  );
}
