/** One thing that waits for somebody and that no rule asks: a finding, or the review of what was put off. */
import { Link } from '@tanstack/react-router';
import { readable } from '../finding/finding-line.tsx';
import { strings } from '../strings/due-list.ts';
import { sourceWords, tradeWords } from '../strings/finding-codes.ts';
import { nameOfZone } from '../strings/zones.ts';
import { Day } from '../ui/day.tsx';
import { Standing } from '../ui/standing.tsx';
import { daysInWords } from './days-in-words.ts';
import type { DueMatter } from './due.query.ts';

type Props = { matter: DueMatter; asAt: string | undefined; choosing: boolean };

export function MatterLine({ matter, asAt, choosing }: Props) {
  const { standing, days, label, vessel, dueOn, action, zone, sentence, trade, responsible } = matter;
  const who = [trade && tradeWords[trade], responsible].filter(Boolean).join(', ');
  return (
    <tr className="due-line">
      {choosing && <td className="cell-choose" />}
      <td className="cell-standing">
        <Standing standing={standing} />
      </td>
      <td className="number cell-by">{days !== undefined && daysInWords(days)}</td>
      <td className="cell-thing">
        <Link to="/findings/$findingId" params={{ findingId: matter.id }} className="opens">
          {label}
        </Link>
        <span className="sub">{nameOfZone(zone)}</span>
      </td>
      <td className="cell-vessel">
        <Link to="/vessels/$vesselId" params={{ vesselId: vessel.id }} search={{ asAt }} className="vessel-name">
          {vessel.name}
        </Link>
      </td>
      <td className="cell-due">{dueOn ? <Day on={dueOn} /> : <span className="quiet">{strings.noDate}</span>}</td>
      <td className="cell-do">
        {action.words}
        {who && <span className="sub">{who}</span>}
      </td>
      <td className="cell-source quiet" title={readable(sentence)}>
        {sourceWords[matter.source]}
      </td>
    </tr>
  );
}
