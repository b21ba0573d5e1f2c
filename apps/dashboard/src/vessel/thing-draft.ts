/** A template's things while somebody confirms them: which are aboard, and what they are called there. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/new-vessel.ts';
import type { Template } from './template.query.ts';
import { byZone } from './zones.ts';

type NewItem = components['schemas']['NewItem'];

const BOXES = ['label', 'zone', 'quantity'] as const;
export type ThingBox = (typeof BOXES)[number];
/** `place` is where the template has it: the form's order does not jump while a box is typed in. */
export type ThingDraft = Readonly<Record<ThingBox, string>> & {
  readonly kind: string;
  readonly place: string;
  readonly aboard: boolean;
};
/** By the thing's row in the form. */
export type ThingFaults = Readonly<Record<number, Partial<Record<ThingBox, string>>>>;

/** In survey order. */
export function thingsOf({ items }: Template): ThingDraft[] {
  return byZone(items, ({ zone }) => zone).flatMap(({ zone: place, things }) =>
    things.map(({ kind, label, zone, quantity }) => ({
      kind,
      label,
      zone,
      quantity: String(quantity),
      place,
      aboard: true,
    })),
  );
}

/** What is ticked, with the row of each, so that a fault finds its way back. */
export type Ticked = { readonly items: NewItem[]; readonly rows: readonly number[] };

export function toNewItems(
  things: readonly ThingDraft[],
): ({ kind: 'ready' } & Ticked) | { kind: 'faults'; faults: ThingFaults } {
  const ticked = things.flatMap((thing, row) => (thing.aboard ? [{ thing, row }] : []));
  const wrong = ticked
    .map(({ thing, row }) => [row, faultsOf(thing)] as const)
    .filter(([, faults]) => Object.keys(faults).length > 0);
  if (wrong.length > 0) return { kind: 'faults', faults: Object.fromEntries(wrong) };
  return { kind: 'ready', items: ticked.map(({ thing }) => toNewItem(thing)), rows: ticked.map(({ row }) => row) };
}

function faultsOf({ label, quantity }: ThingDraft): Partial<Record<ThingBox, string>> {
  const count = Number(quantity);
  return {
    ...(label.trim() === '' && { label: strings.labelFault }),
    ...(!(Number.isInteger(count) && count > 0) && { quantity: strings.quantityFault }),
  };
}

function toNewItem({ kind, label, zone, quantity }: ThingDraft): NewItem {
  const where = zone.trim() === '' ? {} : { zone: zone.trim() };
  return { kind, label: label.trim(), quantity: Number(quantity), ...where };
}

export const isThingBox = (text: string): text is ThingBox => BOXES.some((box) => box === text);
