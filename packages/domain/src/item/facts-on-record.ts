/** Which facts hold: corrections strike out, and nothing learned later is looked at. */
import type { Day } from '../calendar/day.ts';
import type { Fact } from './fact.ts';

export type FactsOnRecord = { readonly held: readonly Fact[]; readonly struckOut: readonly Fact[] };

/**
 * Sorted, so that the order in which facts come never matters. A correction may itself be corrected:
 * whatever a known fact names is struck out, and stays so. One that only retracts says nothing itself.
 */
export function factsOnRecord(facts: readonly Fact[], knownAt?: string): FactsOnRecord {
  const known = facts.filter((fact) => isKnown(fact.recordedAt, knownAt)).sort(byDayThenId);
  const struck = new Set(known.map((fact) => fact.corrects));
  return {
    held: known.filter((fact) => !struck.has(fact.id) && !fact.retracts),
    struckOut: known.filter((fact) => struck.has(fact.id) && !fact.retracts),
  };
}

/** Whether something recorded at one instant was known at another; both RFC 3339. */
export function isKnown(recordedAt: string, knownAt: string | undefined): boolean {
  return knownAt === undefined || Date.parse(recordedAt) <= Date.parse(knownAt);
}

/** A plate: it says something about the unit, not about a day on which somebody did something. */
export function isPlate(fact: Pick<Fact, 'fact'>): boolean {
  return fact.fact === 'manufactured' || fact.fact === 'printed_expiry';
}

/**
 * The day that places a fact in time. An act known only to the month or year counts from the first
 * day it can mean, and a plate from the day it was read, where that is known.
 */
export function dayOfFact(fact: Fact): Day {
  if (fact.fact === 'printed_expiry') return fact.readOn ?? fact.on.last;
  if (fact.fact === 'manufactured') return fact.readOn ?? fact.on.first;
  return fact.on.first;
}

function byDayThenId(a: Fact, b: Fact): number {
  return dayOfFact(a) - dayOfFact(b) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}
