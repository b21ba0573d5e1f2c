/** What is on record of the unit that is aboard, as at a day and as known at an instant. */
import type { Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { Fact } from './fact.ts';
import { dayOfFact, factsOnRecord, isPlate } from './facts-on-record.ts';
import { unitsOf } from './units.ts';

/** As at the end of which day, and as known at which instant (RFC 3339); both absent: all that is on record. */
export type Cut = { readonly asOf?: Day; readonly knownAt?: string };

export type FactSetAside = { readonly fact: Fact; readonly why: string };

export type UnitAboard =
  | { readonly kind: 'aboard'; readonly facts: readonly Fact[]; readonly setAside: readonly FactSetAside[] }
  | { readonly kind: 'not_yet_aboard' }
  | { readonly kind: 'withdrawn' };

/** An act after the day does not count; a plate does, whenever it was read, if its unit was the one aboard. */
export function unitAboard(facts: readonly Fact[], cut: Cut = {}): UnitAboard {
  const record = factsOnRecord(facts, cut.knownAt);
  const { starts, unitOf } = unitsOf(record);
  const asOf = cut.asOf ?? (Number.POSITIVE_INFINITY as Day);
  const current = starts.filter((start) => dayOfFact(start) <= asOf).length;
  const inTime = (fact: Fact) => isPlate(fact) || dayOfFact(fact) <= asOf;

  const ofUnit = record.held.filter((fact) => unitOf(fact) === current);
  const counting = ofUnit.filter(inTime);
  if (counting.some((fact) => fact.fact === 'withdrawn' && fact.outcome === 'passed')) return { kind: 'withdrawn' };
  if (isBegunOnlyAfter(ofUnit, asOf)) return { kind: 'not_yet_aboard' };
  const earlier = record.held.filter((fact) => unitOf(fact) < current);
  return {
    kind: 'aboard',
    facts: counting,
    setAside: [
      ...record.struckOut.filter(inTime).map((fact) => ({ fact, why: 'It was struck out by a correction.' })),
      ...earlier.map((fact) => ({ fact, why: ofAnEarlierUnit(fact, starts[unitOf(fact)]) })),
    ],
  };
}

/** Made or fitted after the day, with nothing on record to show that it was aboard before. */
function isBegunOnlyAfter(facts: readonly Fact[], asOf: Day): boolean {
  const passed = (kind: Fact['fact']) => facts.filter((fact) => fact.fact === kind && fact.outcome === 'passed');
  const fitted = passed('installed').some((fact) => dayOfFact(fact) > asOf);
  const made = passed('manufactured');
  const madeAfter = made.length > 0 && made.every(({ on }) => on.first > asOf);
  const seen = facts.some((fact) => dayOfFact(fact) <= asOf && (!isPlate(fact) || fact.readOn !== undefined));
  return (fitted || madeAfter) && !seen;
}

function ofAnEarlierUnit(fact: Fact, replacement: Fact | undefined): string {
  const why = `It belongs to what was replaced${replacement ? ` on ${dayInWords(dayOfFact(replacement))}` : ''}.`;
  if (!isPlate(fact) || fact.readOn !== undefined) return why;
  return `${why} If it was read on the new one, record the day on which it was read.`;
}
