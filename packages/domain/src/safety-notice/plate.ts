/** What is written of a thing's plate, and what was written before. */
import type { Day } from '../calendar/day.ts';
import { isKnown } from '../item/facts-on-record.ts';
import type { Cut } from '../item/unit-aboard.ts';

export type Plate = {
  readonly maker: string | null;
  readonly model: string | null;
  readonly serialNumber: string | null;
  /** An entry may stand for several things; one serial number does not speak for all of them. */
  readonly quantity: number;
};

/** `until`: when it was written over (RFC 3339). `replacedOn`: the day on which another unit came; `null`: it was put right. */
export type FormerPlate = { readonly plate: Plate; readonly until: string; readonly replacedOn: Day | null };

/** `since`: when it was written (RFC 3339). */
export type PlateOnRecord = Plate & { readonly since: string };

export type PlateHistory = {
  readonly current: Plate;
  /** When the item was put on the list. */
  readonly addedAt: string;
  readonly former: readonly FormerPlate[];
};

/** As it was known then, of the unit that was aboard on the day. */
export function plateAt({ current, addedAt, former }: PlateHistory, { asOf, knownAt }: Cut): PlateOnRecord {
  const inOrder = former.toSorted((a, b) => Date.parse(a.until) - Date.parse(b.until));
  const at = inOrder.findIndex(
    ({ until, replacedOn }) =>
      !isKnown(until, knownAt) || (replacedOn !== null && asOf !== undefined && asOf < replacedOn),
  );
  const since = (at < 0 ? inOrder.at(-1) : inOrder[at - 1])?.until ?? addedAt;
  return { ...(inOrder[at]?.plate ?? current), since };
}

/** Whether anything that a notice goes by differs. */
export function isOtherPlate(a: Plate, b: Plate): boolean {
  return a.maker !== b.maker || a.model !== b.model || a.serialNumber !== b.serialNumber || a.quantity !== b.quantity;
}
