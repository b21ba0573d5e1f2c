/** What a vessel is doing, and what happened to her: dated, in dimensions that can be true together. */
import type { Day } from '../calendar/day.ts';

export type Place = 'afloat' | 'ashore';
export type Use = 'in_commission' | 'laid_up' | 'out_of_service';

/** Holds from the day `from` until the next situation begins. */
export type Situation = {
  readonly id: string;
  readonly from: Day;
  readonly place: Place;
  readonly use: Use;
  readonly dismantled: boolean;
  readonly underRepair: boolean;
  readonly recordedAt: string;
};

/** What a rule may read of a situation. */
export type SituationPart = 'place' | 'use' | 'dismantled' | 'underRepair';

export const VESSEL_EVENTS = [
  'inspection',
  'haul_out',
  'liferaft_service',
  'race_start',
  'grounding',
  'collision',
  'lightning',
  'fire',
  'structural_repair',
  'change_of_owner',
  'gale',
  'alteration',
  'gas_system_change',
] as const;
export type VesselEventKind = (typeof VESSEL_EVENTS)[number];

/** One dated thing that happened to the vessel, or is planned for her. */
export type VesselEvent = {
  readonly id: string;
  readonly event: VesselEventKind;
  readonly on: Day;
  readonly planned: boolean;
  readonly recordedAt: string;
};
