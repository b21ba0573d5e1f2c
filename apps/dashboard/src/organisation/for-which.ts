import type { VesselName } from '../rule/own-rule.query.ts';
import { people as words } from '../strings/people.ts';
import { inAList } from '../ui/number-words.ts';

/** The vessels that something is for, by name; none named: the whole fleet. */
export function forWhich(vesselIds: readonly string[] | undefined, vessels: readonly VesselName[]): string {
  if (!vesselIds) return words.whole;
  return inAList(vesselIds.map((id) => vessels.find((vessel) => vessel.id === id)?.name ?? words.unknownVessel));
}
