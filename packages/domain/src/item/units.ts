/**
 * Which unit a fact speaks of. An item is a place for one thing after another: each `replaced` brings a
 * new unit, and what was said of the old one no longer counts.
 */
import type { Fact } from './fact.ts';
import { dayOfFact, type FactsOnRecord } from './facts-on-record.ts';

export type Units = {
  /** The replacements, in order of day: the first begins unit 1. */
  readonly starts: readonly Fact[];
  /** Nought before the first replacement. */
  readonly unitOf: (fact: Fact) => number;
};

export function unitsOf({ held, struckOut }: FactsOnRecord): Units {
  const starts = held.filter((fact) => fact.fact === 'replaced' && fact.outcome === 'passed');
  const firstSaid = firstSaidIn([...held, ...struckOut]);
  const comesAfter = (fact: Fact, start: Fact): boolean => {
    const days = dayOfFact(fact) - dayOfFact(start);
    if (days !== 0) return days > 0;
    return fact.fact !== 'withdrawn' && firstSaid(fact) >= firstSaid(start);
  };
  return { starts, unitOf: (fact) => starts.filter((start) => comesAfter(fact, start)).length };
}

/**
 * When a statement was first made: a correction stands in the place of what it corrects. It parts what was
 * said of the old unit from what was said of the new one on the day of the replacement itself.
 */
function firstSaidIn(facts: readonly Fact[]): (fact: Fact) => number {
  const byId = new Map(facts.map((fact) => [fact.id, fact]));
  return (fact) => {
    let first = Date.parse(fact.recordedAt);
    const seen = new Set<string>();
    for (let id = fact.corrects; id !== undefined && !seen.has(id); id = byId.get(id)?.corrects) {
      seen.add(id);
      const earlier = byId.get(id);
      if (earlier) first = Math.min(first, Date.parse(earlier.recordedAt));
    }
    return first;
  };
}
