/** Brings each fault of entering a vessel to the box it is about: hers, or that of one of her things. */
import type { Problem } from '@garboard/client/api-problem.ts';
import { strings } from '../strings/new-vessel.ts';
import { isThingBox, type ThingDraft, type ThingFaults } from './thing-draft.ts';
import { isVesselBox, type VesselFaults } from './vessel-draft.ts';

export type EntryFaults = {
  readonly vessel: VesselFaults;
  readonly things: ThingFaults;
  readonly others: readonly string[];
};

export const NO_FAULTS: EntryFaults = { vessel: {}, things: {}, others: [] };

/** `rows`: which row of the form each thing sent came from. */
export function entryFaults({ errors, detail, title }: Problem, rows: readonly number[]): EntryFaults {
  const vessel: VesselFaults = {};
  const things: Record<number, ThingFaults[number]> = {};
  const others: string[] = [];
  for (const { pointer, detail: fault } of errors ?? []) {
    const [first = '', index = '', box = ''] = pointer.slice(1).split('/');
    const row = first === 'items' ? rows[Number(index)] : undefined;
    if (isVesselBox(first) && index === '') vessel[first] = fault;
    else if (row !== undefined && isThingBox(box)) things[row] = { ...things[row], [box]: fault };
    else others.push(pointer ? `${pointer.slice(1)}: ${fault}` : fault);
  }
  return { vessel, things, others: errors?.length ? others : [detail ?? title] };
}

export const thingId = (row: number, box: string) => `thing-${row}-${box}`;

/** Every fault with the name of its box, for the head of the form. */
export function toldFaults(
  { vessel, things }: EntryFaults,
  drafts: readonly ThingDraft[],
  kindName: (kind: string) => string,
) {
  const hers = Object.entries(vessel).map(([box, fault]) => ({
    id: `vessel-${box}`,
    name: isVesselBox(box) ? strings.box[box] : box,
    fault,
  }));
  const ofThings = Object.entries(things).flatMap(([row, faults]) =>
    Object.entries(faults).map(([box, fault]) => ({
      id: thingId(Number(row), box),
      name: nameOf(drafts[Number(row)], box, kindName),
      fault,
    })),
  );
  return [...hers, ...ofThings];
}

function nameOf(thing: ThingDraft | undefined, box: string, kindName: (kind: string) => string): string {
  const called = thing?.label.trim() || kindName(thing?.kind ?? '');
  return isThingBox(box) ? `${called}: ${strings.columns[box].toLowerCase()}` : called;
}
