/** One thing due, and under it its reasoning when it is open. */
import { Link } from '@tanstack/react-router';
import { Reasoning } from '../item/reasoning.tsx';
import { SourceLink } from '../item/source-link.tsx';
import { sourceInShort } from '../item/source-words.ts';
import { strings } from '../strings/due-list.ts';
import { Day } from '../ui/day.tsx';
import { Standing } from '../ui/standing.tsx';
import { ChooseBox } from './choose-box.tsx';
import { daysInWords } from './days-in-words.ts';
import type { DueRow } from './due.query.ts';

type Props = { row: DueRow; rows: readonly DueRow[]; asAt: string | undefined; open: boolean; onTurn: () => void };

export function DueLine({ row, rows, asAt, open, onTurn }: Props) {
  const id = `why-${row.item.id}-${row.ruleId}-${row.duty}`;
  return (
    <>
      <tr className={open ? 'due-line open' : 'due-line'}>
        <ChooseBox row={row} rows={rows} />
        <td className="cell-standing">
          <Standing standing={row.standing} />
          {row.suspendedFrom && <span className="quiet"> {strings.suspendedNow}</span>}
        </td>
        <td className="number cell-by">{row.days !== undefined && daysInWords(row.days)}</td>
        <td className="cell-thing">
          <button
            type="button"
            className="opens"
            aria-expanded={open}
            aria-controls={open ? id : undefined}
            onClick={onTurn}
          >
            {thing(row)}
          </button>
        </td>
        <td className="cell-vessel">
          <Link to="/vessels/$vesselId" params={{ vesselId: row.vessel.id }} search={{ asAt }} className="vessel-name">
            {row.vessel.name}
          </Link>
        </td>
        <td className="cell-due">
          {row.dueOn ? <Day on={row.dueOn} /> : <span className="quiet">{strings.noDate}</span>}
        </td>
        <td className="cell-do">{row.action.words}</td>
        <td className="cell-source quiet">
          <SourceLink ruleId={row.ruleId} className="rule-link">
            {sourceInShort(row.reference)}
          </SourceLink>
        </td>
      </tr>
      {open && (
        <tr className="due-reasoning">
          <td colSpan={8} id={id}>
            <Reasoning
              of={{ itemId: row.item.id, ruleId: row.ruleId, duty: row.duty }}
              kind={row.item.kind}
              vesselId={row.vessel.id}
              asAt={asAt}
            />
          </td>
        </tr>
      )}
    </>
  );
}

const thing = ({ item }: DueRow) => (item.quantity > 1 ? `${item.label} ×${item.quantity}` : item.label);
