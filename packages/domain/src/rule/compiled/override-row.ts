/** Which of an item's own figures is in force for a duty: the same as `overrideInForce`. */
import type { Aboard } from './aboard.ts';
import { NONE } from './codes.ts';

/** The first row of the duty that is in force; the columns have them in the order in which they go first. */
export function overrideRow(duty: number, item: number, { columns, cut }: Aboard): number {
  const { item: items, overrides } = columns;
  const to = items.overridesFrom[item + 1] as number;
  for (let row = items.overridesFrom[item] as number; row < to; row++) {
    if (overrides.duty[row] !== duty || (overrides.from[row] as number) > cut.asOf) continue;
    const isOver = (overrides.endedOn[row] as number) <= cut.asOf && (overrides.endedAt[row] as number) <= cut.knownAt;
    if ((overrides.recordedAt[row] as number) <= cut.knownAt && !isOver) return row;
  }
  return NONE;
}
