/** An item's facts in columns: words as codes, texts as days. */
import { type Day, dayOfText } from '../../calendar/day.ts';
import { firstDayOf, lastDayFrom } from '../../calendar/recorded-date.ts';
import { actCode, capacityCode, factCode, NO_DAY, NONE, outcomeCode, testCode } from './codes.ts';
import type { StoredFact } from './fill-columns.ts';
import { withRoom } from './grow.ts';
import type { ItemColumns } from './item-columns.ts';

type Ordered = {
  readonly facts: readonly StoredFact[];
  /** The days that place them in time, and the first day that each date can mean. */
  readonly days: readonly number[];
  readonly firsts: readonly number[];
  readonly count: number;
};

/** Facts put in order of day and then of id, in lists that are used again. */
export function inOrderOfDay() {
  const facts: StoredFact[] = [];
  const days: number[] = [];
  const firsts: number[] = [];
  const ordered = { facts, days, firsts, count: 0 };
  const comesBefore = (day: number, { id }: StoredFact, at: number) =>
    day - (days[at] as number) < 0 || (day === days[at] && id < (facts[at] as StoredFact).id);
  return (all: readonly StoredFact[]): Ordered => {
    for (let next = 0; next < all.length; next++) {
      const fact = all[next] as StoredFact;
      const first = firstIn(fact.on);
      const day = placeInTime(fact, first);
      let at = next;
      for (; at > 0 && comesBefore(day, fact, at - 1); at--) {
        facts[at] = facts[at - 1] as StoredFact;
        days[at] = days[at - 1] as number;
        firsts[at] = firsts[at - 1] as number;
      }
      facts[at] = fact;
      days[at] = day;
      firsts[at] = first;
    }
    ordered.count = all.length;
    return ordered;
  };
}

/** The same as `dayOfFact`. */
function placeInTime({ fact, on, readOn }: StoredFact, first: Day): number {
  if (readOn !== null && (fact === 'printed_expiry' || fact === 'manufactured')) return dayOfText(readOn);
  return fact === 'printed_expiry' ? lastDayFrom(first, on) : first;
}

/** Answers with the row after the last. */
export function fillFacts(ordered: Ordered, from: number, columns: ItemColumns): number {
  columns.facts = withRoom(columns.facts, columns.facts.day, from + ordered.count);
  for (let at = 0; at < ordered.count; at++) fillFact(at, from, ordered, columns);
  return from + ordered.count;
}

function fillFact(at: number, from: number, ordered: Ordered, { facts }: ItemColumns): void {
  const stored = ordered.facts[at] as StoredFact;
  const row = from + at;
  const fact = factCode(stored.fact);
  const test = testCode(stored.test);
  const first = ordered.firsts[at] as Day;
  facts.fact[row] = fact;
  facts.test[row] = test;
  facts.act[row] = actCode(fact, test);
  facts.outcome[row] = outcomeCode(stored.outcome);
  facts.capacity[row] = capacityCode(stored.capacity);
  facts.first[row] = first;
  facts.last[row] = lastDayFrom(first, stored.on);
  facts.day[row] = ordered.days[at] as number;
  facts.until[row] = stored.until === null ? NO_DAY : dayOfText(stored.until);
  facts.readOn[row] = stored.readOn === null ? NO_DAY : dayOfText(stored.readOn);
  facts.hours[row] = stored.hours ?? Number.NaN;
  facts.recordedAt[row] = stored.recordedAt;
  facts.retracts[row] = stored.retracts ? 1 : 0;
  facts.corrects[row] = stored.corrects === null ? NONE : rowOf(stored.corrects, from, ordered);
}

/** `NONE` where it names no fact of this item. */
function rowOf(id: string, from: number, { facts, count }: Ordered): number {
  for (let at = 0; at < count; at++) if ((facts[at] as StoredFact).id === id) return from + at;
  return NONE;
}

function firstIn(text: string): Day {
  const day = firstDayOf(text);
  if (day === null) throw new Error(`no date: ${text}`);
  return day;
}
