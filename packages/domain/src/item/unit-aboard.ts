/**
 * Which unit is aboard, and what is on record of it.
 *
 * An item is a place for one thing after another: each `replaced` brings a new unit, and what was said
 * of the old one no longer counts.
 */
import type { Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { Fact } from './fact.ts';
import { dayOfFact, factsOnRecord, isPlate } from './facts-on-record.ts';

/** As at the end of which day, and as known at which instant (RFC 3339); both absent: all that is on record. */
export type Cut = { readonly asOf?: Day; readonly knownAt?: string };

export type FactSetAside = { readonly fact: Fact; readonly why: string };

export type UnitAboard =
  | { readonly kind: 'aboard'; readonly facts: readonly Fact[]; readonly setAside: readonly FactSetAside[] }
  | { readonly kind: 'not_yet_aboard' }
  | { readonly kind: 'withdrawn' };

/** The unit aboard at the cut, with every fact that is on record of it. */
export function unitAboard(facts: readonly Fact[], cut: Cut = {}): UnitAboard {
  const { held, struckOut } = factsOnRecord(facts, cut.knownAt);
  const asOf = cut.asOf ?? (Number.POSITIVE_INFINITY as Day);
  const starts = held.filter(isNewUnit).map(dayOfFact);
  const current = starts.filter((start) => start <= asOf).length;
  const inTime = (fact: Fact) => isPlate(fact) || dayOfFact(fact) <= asOf;

  const all = held.filter((fact) => unitOf(fact, starts) === current);
  const ofUnit = all.filter(inTime);
  if (ofUnit.some((fact) => fact.fact === 'withdrawn' && fact.outcome === 'passed')) return { kind: 'withdrawn' };
  if (current === 0 && isFittedLater(all, asOf)) return { kind: 'not_yet_aboard' };
  return {
    kind: 'aboard',
    facts: ofUnit,
    setAside: [
      ...struckOut.filter(inTime).map((fact) => ({ fact, why: 'It was struck out by a correction.' })),
      ...held
        .filter((fact) => unitOf(fact, starts) < current)
        .map((fact) => ({ fact, why: ofTheOldUnit(fact, starts[unitOf(fact, starts)] as Day) })),
    ],
  };
}

function isNewUnit(fact: Fact): boolean {
  return fact.fact === 'replaced' && fact.outcome === 'passed';
}

/** How many units came before. What is withdrawn on the day of the replacement is the old unit. */
function unitOf(fact: Fact, starts: readonly Day[]): number {
  const day = dayOfFact(fact);
  return starts.filter((start) => (fact.fact === 'withdrawn' ? start < day : start <= day)).length;
}

/** Fitted only after the day, with nothing on record to show that it was aboard before. */
function isFittedLater(facts: readonly Fact[], asOf: Day): boolean {
  const fitted = facts.some((fact) => fact.fact === 'installed' && fact.outcome === 'passed' && dayOfFact(fact) > asOf);
  const seen = facts.some((fact) => dayOfFact(fact) <= asOf && (!isPlate(fact) || fact.readOn !== undefined));
  return fitted && !seen;
}

function ofTheOldUnit(fact: Fact, replacedOn: Day): string {
  const why = `It belongs to what was replaced on ${dayInWords(replacedOn)}.`;
  if (!isPlate(fact) || fact.readOn !== undefined) return why;
  return `${why} If it was read on the new one, record the day on which it was read.`;
}
