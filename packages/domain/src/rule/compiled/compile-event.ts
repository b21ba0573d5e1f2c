/** What makes a duty due at once: the same as `countTriggered`. */
import type { Limit } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { eventBits, factBits, NO_DAY, NONE, NOT_OWED, PASSED } from './codes.ts';
import { firstHeldAfter } from './take-events.ts';

export function triggeredDay(limit: Extract<Limit, { kind: 'triggered' }>): (aboard: Aboard) => number {
  const events = eventBits(limit.events);
  const facts = factBits(limit.facts);
  return (aboard) => {
    const since = aboard.last === NONE ? NOT_OWED : (aboard.columns.facts.day[aboard.last] as number);
    const first = Math.min(firstHeldAfter(since, events, aboard), firstFactAfter(since, facts, aboard));
    return first === NO_DAY ? NOT_OWED : first;
  };
}

function firstFactAfter(since: number, facts: number, { rows, count, columns }: Aboard): number {
  const { fact, outcome, day, first } = columns.facts;
  let earliest = NO_DAY;
  for (let at = 0; at < count; at++) {
    const row = rows[at] as number;
    const isMeant = ((facts >>> (fact[row] as number)) & 1) === 1 && outcome[row] === PASSED;
    if (isMeant && (day[row] as number) > since) earliest = Math.min(earliest, first[row] as number);
  }
  return earliest;
}
