/** What somebody has typed so far about a vessel that is not on the register yet. */
import type { components } from '@garboard/client/generated/api.d.ts';
import type { SchemeCode } from '../strings/codes.ts';
import { strings } from '../strings/new-vessel.ts';

type NewVessel = components['schemas']['NewVessel'];

const BOXES = ['name', 'type', 'lengthOverallM', 'timeZone'] as const;
export type VesselBox = (typeof BOXES)[number];
export type VesselDraft = Readonly<Record<VesselBox, string>> & { readonly schemes: readonly SchemeCode[] };
export type VesselFaults = Partial<Record<VesselBox, string>>;

export const emptyVessel: VesselDraft = { name: '', type: '', lengthOverallM: '', timeZone: '', schemes: [] };

export function toNewVessel(
  draft: VesselDraft,
): { kind: 'ready'; body: NewVessel } | { kind: 'faults'; faults: VesselFaults } {
  const length = readMetres(draft.lengthOverallM);
  const faults: VesselFaults = {
    ...(draft.name.trim() === '' && { name: strings.nameFault }),
    ...(length === null && { lengthOverallM: strings.lengthFault }),
  };
  if (Object.keys(faults).length > 0 || length === null) return { kind: 'faults', faults };
  return {
    kind: 'ready',
    body: {
      name: draft.name.trim(),
      ...(draft.type.trim() !== '' && { type: draft.type.trim() }),
      ...(length !== undefined && { lengthOverallM: length }),
      ...(draft.timeZone !== '' && { timeZone: draft.timeZone }),
      schemes: [...draft.schemes],
    },
  };
}

/** `undefined` where nothing is typed, `null` where it is no length. A decimal comma is one too. */
function readMetres(text: string): number | undefined | null {
  if (text.trim() === '') return undefined;
  const match = /^(\d+(?:[.,]\d+)?)\s*m?$/.exec(text.trim());
  const metres = Number(match?.[1]?.replace(',', '.'));
  return metres > 0 ? metres : null;
}

export const isVesselBox = (text: string): text is VesselBox => BOXES.some((box) => box === text);
