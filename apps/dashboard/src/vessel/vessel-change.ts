/** What somebody has typed of a vessel that is on the register, and what of it is a change. */
import type { Problem } from '@garboard/client/api-problem.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/change-vessel.ts';
import type { SchemeCode } from '../strings/codes.ts';

type Vessel = components['schemas']['Vessel'];
type VesselChange = components['schemas']['VesselChange'];

export const WORDS = ['type', 'hullMaterial', 'rig', 'homePort'] as const;
export const WHOLE = ['builtYear', 'personsMax'] as const;
export const MEASURES = ['lengthOverallM', 'waterlineLengthM', 'beamM', 'draughtM', 'displacementKg'] as const;
export const IDENTIFIERS = ['hin', 'imo', 'mmsi', 'callSign', 'officialNumber'] as const;

const BOXES = ['name', 'timeZone', ...WORDS, ...WHOLE, ...MEASURES, ...IDENTIFIERS] as const;
export type Box = (typeof BOXES)[number];
export type ChangeDraft = Readonly<Record<Box, string>> & { readonly schemes: readonly SchemeCode[] };
export type ChangeFaults = Partial<Record<Box, string>>;

export function draftOfVessel(vessel: Vessel): ChangeDraft {
  const of = (box: Box): string => String((isIdentifier(box) ? vessel.identifiers?.[box] : vessel[box]) ?? '');
  const boxes = Object.fromEntries(BOXES.map((box) => [box, of(box)])) as Record<Box, string>;
  return { ...boxes, schemes: vessel.schemes };
}

const isIdentifier = (box: Box): box is (typeof IDENTIFIERS)[number] => IDENTIFIERS.some((each) => each === box);

type Ready = { kind: 'ready'; body: VesselChange } | { kind: 'faults'; faults: ChangeFaults };

/** Only what differs from her as she was read: what somebody else changes meanwhile is not written over. */
export function toVesselChange(draft: ChangeDraft, vessel: Vessel): Ready {
  const faults = faultsOf(draft);
  if (Object.keys(faults).length > 0) return { kind: 'faults', faults };
  const was = draftOfVessel(vessel);
  const differs = (box: Box) => draft[box].trim() !== was[box];
  const words = Object.fromEntries(WORDS.filter(differs).map((box) => [box, draft[box].trim() || null]));
  const numbers = Object.fromEntries([...WHOLE, ...MEASURES].filter(differs).map((box) => [box, numberIn(draft[box])]));
  const body: VesselChange = {
    ...(differs('name') && { name: draft.name.trim() }),
    ...(differs('timeZone') && { timeZone: draft.timeZone }),
    ...words,
    ...numbers,
    ...(IDENTIFIERS.some(differs) && { identifiers: identifiersIn(draft) }),
    ...(isOtherSet(draft.schemes, vessel.schemes) && { schemes: [...draft.schemes] }),
  };
  return { kind: 'ready', body };
}

function faultsOf(draft: ChangeDraft): ChangeFaults {
  const isWhole = (text: string) => /^\d*$/.test(text.trim());
  const isMeasure = (text: string) => /^(\d+([.,]\d+)?)?$/.test(text.trim());
  const faulty = (boxes: readonly Box[], isRight: (text: string) => boolean, fault: string) =>
    boxes.filter((box) => !isRight(draft[box])).map((box) => [box, fault]);
  return {
    ...(draft.name.trim() === '' && { name: strings.nameFault }),
    ...Object.fromEntries(faulty(WHOLE, isWhole, strings.wholeFault)),
    ...Object.fromEntries(faulty(MEASURES, isMeasure, strings.numberFault)),
  };
}

/** A decimal comma is one too; nothing typed takes the figure away. */
const numberIn = (text: string): number | null => (text.trim() === '' ? null : Number(text.trim().replace(',', '.')));

export function identifiersIn(draft: ChangeDraft): Record<string, string> {
  const said = IDENTIFIERS.filter((box) => draft[box].trim() !== '');
  return Object.fromEntries(said.map((box) => [box, draft[box].trim()]));
}

function isOtherSet(chosen: readonly SchemeCode[], was: readonly SchemeCode[]): boolean {
  return chosen.length !== was.length || chosen.some((each) => !was.includes(each));
}

/** Where she is not as she was typed: each box with what stands there now. */
export function asItIsNow(draft: ChangeDraft, vessel: Vessel): readonly { name: string; now: string }[] {
  const now = draftOfVessel(vessel);
  return BOXES.filter((box) => draft[box].trim() !== now[box]).map((box) => ({
    ...{ name: strings.box[box], now: now[box] },
  }));
}

export function changeFaults({ errors = [], detail, title }: Problem): { faults: ChangeFaults; others: string[] } {
  const all = errors.map(({ pointer, detail: fault }) => ({ box: pointer.split('/').at(-1) ?? '', fault }));
  const isBox = (text: string) => BOXES.some((box) => box === text);
  return {
    faults: Object.fromEntries(all.filter(({ box }) => isBox(box)).map(({ box, fault }) => [box, fault])),
    others: all.length === 0 ? [detail ?? title] : all.filter(({ box }) => !isBox(box)).map(({ fault }) => fault),
  };
}
