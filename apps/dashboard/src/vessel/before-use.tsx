import type { DueRow } from '../due-list/due.query.ts';
import type { Finding } from '../finding/finding.query.ts';
import { isOpen, reasoningKey } from '../item/reasoning-key.ts';
import { strings } from '../strings/vessel.ts';
import { FindingEntry } from './finding-entry.tsx';
import { ObligationLine } from './obligation-line.tsx';
import type { VesselSearch } from './vessel-search.ts';

type Props = {
  rows: readonly DueRow[];
  findings: readonly Finding[];
  search: VesselSearch;
  onOpen: (open: string | undefined) => void;
};

/** What was found and cannot wait, and what is overdue, whatever place it is in. */
export function BeforeUse({ rows, findings, search, onOpen }: Props) {
  const urgent = findings.filter(isUrgent);
  const overdue = rows.filter((row) => row.standing === 'overdue');
  return (
    <section aria-labelledby="before" className="before-use">
      <h2 id="before">{strings.before}</h2>
      {overdue.length + urgent.length === 0 && <p className="quiet">{strings.beforeNothing}</p>}
      <ul>
        {urgent.map((finding) => (
          <FindingEntry key={finding.id} finding={finding} withPlace />
        ))}
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

/** Overdue reviews and repairs count as what is overdue does. */
export const isUrgent = ({ urgency, due }: Finding): boolean => urgency === 'before_use' || due?.standing === 'overdue';
