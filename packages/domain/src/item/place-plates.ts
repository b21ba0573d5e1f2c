/**
 * To which unit a plate belongs where nobody said on which day it was read: facts that are only stated, not
 * stored, mostly do not say. Taken from what is stated together; where that does not tell, it stays open and
 * the date on the plate itself places it.
 */
import { addDays } from '../calendar/day.ts';
import type { Fact } from './fact.ts';
import { dayOfFact, factsOnRecord, isPlate } from './facts-on-record.ts';

export function withPlatesPlaced(facts: readonly Fact[]): readonly Fact[] {
  const { held } = factsOnRecord(facts);
  const readOn = new Map([...ofManufacture(held), ...ofPrint(held)]);
  return facts.map((fact) => {
    const day = readOn.get(fact.id);
    return day === undefined ? fact : { ...fact, readOn: day };
  });
}

type Placed = readonly [id: string, readOn: Fact['on']['first']];

/**
 * The last of several was made for the last unit. One alone was made for whatever anything was done to first
 * after it was made.
 */
function ofManufacture(held: readonly Fact[]): readonly Placed[] {
  const plates = held.filter(isUnplaced('manufactured'));
  const last = plates.at(-1);
  const acts = held.filter((fact) => !isPlate(fact) && fact.outcome === 'passed' && last && comesAfter(fact, last));
  const first = plates.length > 1 ? acts.findLast(isReplacement) : acts[0];
  return last && first && isReplacement(first) ? [[last.id, dayOfFact(first)]] : [];
}

/** What was renewed bore the earlier dates, and the last of them stands on what is aboard now. */
function ofPrint(held: readonly Fact[]): readonly Placed[] {
  const renewal = held.findLast((fact) => fact.outcome === 'passed' && isRenewal(fact));
  const prints = held.filter(isUnplaced('printed_expiry'));
  const last = prints.at(-1);
  if (!renewal || !last) return [];
  const before = addDays(dayOfFact(renewal), -1);
  return prints.filter(({ on }) => on.last < last.on.last).map(({ id }): Placed => [id, before]);
}

function isUnplaced(kind: Fact['fact']) {
  return (fact: Fact) => fact.fact === kind && fact.readOn === undefined && fact.outcome === 'passed';
}

function comesAfter(act: Fact, { on }: Fact): boolean {
  return dayOfFact(act) >= on.first;
}

function isReplacement({ fact }: Fact): boolean {
  return fact === 'replaced';
}

function isRenewal(fact: Fact): boolean {
  const { test } = fact;
  return isReplacement(fact) || test === 'battery' || test === 'renewal_survey';
}
