import type { DueRow } from '../due-list/due.query.ts';
import { isOpen, reasoningKey } from '../item/reasoning-key.ts';
import { strings } from '../strings/vessel.ts';
import { ObligationLine } from './obligation-line.tsx';
import type { VesselSearch } from './vessel-search.ts';

type Props = { rows: readonly DueRow[]; search: VesselSearch; onOpen: (open: string | undefined) => void };

/** What is overdue, whatever place it is in. */
export function BeforeUse({ rows, search, onOpen }: Props) {
  const overdue = rows.filter((row) => row.standing === 'overdue');
  return (
    <section aria-labelledby="before" className="before-use">
      <h2 id="before">{strings.before}</h2>
      {overdue.length === 0 && <p className="quiet">{strings.beforeNothing}</p>}
      <ul>
        {overdue.map((row) => {
          const key = reasoningKey(row.item.id, row.ruleId, row.duty);
          const open = isOpen(search.open, key);
          return (
            <ObligationLine
              key={key}
              row={row}
              of={`${row.item.label}: `}
              asAt={search.asAt}
              open={open}
              picked={false}
              onTurn={() => onOpen(open ? undefined : key)}
            />
          );
        })}
      </ul>
    </section>
  );
}
