/** A permission to be late counts only when it is on record, and only as far as the rule lets it go. */
import type { Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { Capacity } from './fact.ts';
import { dayOfFact } from './facts-on-record.ts';
import { lastDone } from './last-done.ts';
import type { Grounds } from './limit-count.ts';
import type { FactSetAside } from './unit-aboard.ts';

/** Who can speak for an authority. */
export const AUTHORITY: readonly Capacity[] = ['marine_inspector', 'surveyor'];

export type Extended = {
  readonly until: Day | null;
  readonly factIds: readonly string[];
  readonly assumed: readonly string[];
  readonly doubts: readonly string[];
  readonly setAside: readonly FactSetAside[];
};

const NONE: Extended = { until: null, factIds: [], assumed: [], doubts: [], setAside: [] };

/** The extension on record since the duty was last done, capped at `latest`. */
export function extendedUntil(grounds: Grounds, latest: Day | null): Extended {
  const since = grounds.last.fact ? dayOfFact(grounds.last.fact) : Number.NEGATIVE_INFINITY;
  const records = grounds.facts.filter((fact) => fact.fact === 'extended' && dayOfFact(fact) >= since);
  if (records.length === 0) return NONE;
  if (!grounds.duty.extension || latest === null) {
    return { ...NONE, setAside: records.map((fact) => ({ fact, why: 'The rule allows no extension here.' })) };
  }
  const { fact, assumed, setAside } = lastDone(records, [{ act: 'extended', by: AUTHORITY }]);
  if (fact?.until === undefined) return { ...NONE, setAside };
  const until = Math.min(fact.until, latest) as Day;
  return {
    until,
    factIds: [fact.id],
    assumed,
    setAside,
    doubts: until < fact.until ? [tooLong(fact.until, until)] : [],
  };
}

function tooLong(recorded: Day, allowed: Day): string {
  return `The extension on record runs to ${dayInWords(recorded)}; the rule lets it go no further than ${dayInWords(allowed)}.`;
}
