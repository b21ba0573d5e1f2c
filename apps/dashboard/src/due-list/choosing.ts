/** Which rows of the due list are chosen for a bulk act. */
import { createContext, useContext, useMemo, useRef, useState } from 'react';
import { reasoningKey } from '../item/reasoning-key.ts';
import type { DueRow } from './due.query.ts';

export type Choosing = {
  readonly chosen: ReadonlyMap<string, DueRow>;
  /** With `upTo`, every row of the list from the one turned last. */
  turn(row: DueRow, rows: readonly DueRow[], upTo: boolean): void;
  turnAll(rows: readonly DueRow[], on: boolean): void;
  clear(): void;
};

export const keyOfRow = ({ item, ruleId, duty }: DueRow) => reasoningKey(item.id, ruleId, duty);

/** A notice is answered on its own page; what a rule asks is answered by a fact. */
export const canBeChosen = ({ source }: DueRow) => source === 'obligation';

/** `null` where nobody may choose. */
export const ChoosingContext = createContext<Choosing | null>(null);
export const useChoosing = () => useContext(ChoosingContext);

export function useNewChoosing(): Choosing {
  const [chosen, setChosen] = useState<ReadonlyMap<string, DueRow>>(new Map());
  const last = useRef<DueRow | null>(null);
  return useMemo(() => {
    const turnAll = (rows: readonly DueRow[], on: boolean) =>
      setChosen((now) => {
        const next = new Map(now);
        for (const row of rows.filter(canBeChosen)) on ? next.set(keyOfRow(row), row) : next.delete(keyOfRow(row));
        return next;
      });
    const turn = (row: DueRow, rows: readonly DueRow[], upTo: boolean) => {
      turnAll(upTo ? between(rows, last.current, row) : [row], !chosen.has(keyOfRow(row)));
      last.current = row;
    };
    return { chosen, turn, turnAll, clear: () => setChosen(new Map()) };
  }, [chosen]);
}

function between(rows: readonly DueRow[], from: DueRow | null, to: DueRow): readonly DueRow[] {
  const keys = rows.map(keyOfRow);
  const [a, b] = [from ? keys.indexOf(keyOfRow(from)) : -1, keys.indexOf(keyOfRow(to))];
  return a < 0 || b < 0 ? [to] : rows.slice(Math.min(a, b), Math.max(a, b) + 1);
}

/** A fact is about a thing: chosen twice, for two duties, it is recorded once. */
export function thingsChosen({ chosen }: Choosing): DueRow[] {
  return [...new Map([...chosen.values()].map((row) => [row.item.id, row])).values()];
}
