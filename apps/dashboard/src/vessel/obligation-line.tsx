/** One thing a rule asks, with its standing and date; the reasoning opens under it. */
import { useEffect, useRef } from 'react';
import type { DueRow } from '../due-list/due.query.ts';
import { Reasoning } from '../item/reasoning.tsx';
import { sourceInShort } from '../item/source-words.ts';
import { weightWords } from '../strings/codes.ts';
import { strings } from '../strings/due-list.ts';
import { age } from '../ui/age.ts';
import { Day } from '../ui/day.tsx';
import { Standing } from '../ui/standing.tsx';

type Props = {
  row: DueRow;
  /** Names the thing, where the line does not stand under its name. */
  of: string;
  asAt: string | undefined;
  open: boolean;
  picked: boolean;
  onTurn: () => void;
};

export function ObligationLine({ row, of, asAt, open, picked, onTurn }: Props) {
  const line = useRef<HTMLLIElement>(null);
  const shown = useRef(false);
  // Arriving by a link from the horizon: what was asked for is brought into sight, once.
  useEffect(() => {
    if (open && !shown.current) line.current?.scrollIntoView({ block: 'nearest' });
    shown.current = true;
  }, [open]);
  return (
    <li ref={line} className={`obligation-line${open ? ' open' : ''}${picked ? ' picked' : ''}`}>
      <Standing standing={row.standing} />
      <span className="obligation-words">
        <button type="button" className="opens" aria-expanded={open} onClick={onTurn}>
          {of}
          {row.action.words}
        </button>
        <span className="sub">
          {row.days !== undefined && `${row.days < 0 ? age(-row.days) : strings.inDays(row.days)} · `}
          {weightAndSource(row)}
        </span>
      </span>
      <span className="obligation-day">
        {row.dueOn ? <Day on={row.dueOn} /> : <span className="quiet">{strings.noDate}</span>}
      </span>
      {open && (
        <div className="obligation-reasoning">
          <Reasoning
            of={{ itemId: row.item.id, ruleId: row.ruleId, duty: row.duty }}
            kind={row.item.kind}
            vesselId={row.vessel.id}
            asAt={asAt}
          />
        </div>
      )}
    </li>
  );
}

/** What stands behind it and where that is written; said once where the two are the same words. */
function weightAndSource({ weight, reference }: DueRow): string {
  const source = sourceInShort(reference);
  return source.startsWith(weightWords[weight]) ? source : `by ${weightWords[weight]} · ${source}`;
}
