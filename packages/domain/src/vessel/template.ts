/**
 * What a boat of a certain sort often has aboard, to start her list from. Ours, invented: no source, and never
 * what a law or a certificate asks for. Whoever enters her confirms each line; dates come afterwards, as facts.
 */
import type { ItemKindId } from '../item/item-kind.ts';
import { INLAND_MOTOR_CRUISER, SAFETY_BOAT } from './templates/motor-boats.ts';
import { SMALL_KEELBOAT, TRAINING_DINGHY } from './templates/open-boats.ts';
import { CHARTER_YACHT, COASTAL_CRUISING_YACHT } from './templates/yachts.ts';

export type TemplateItem = {
  readonly kind: ItemKindId;
  /** What it is called aboard, as a proposal. */
  readonly label: string;
  readonly zone: string;
  readonly quantity: number;
};

export type VesselTemplate = {
  readonly id: string;
  readonly name: string;
  /** What sort of boat it is meant for, in a sentence. */
  readonly forWhom: string;
  readonly items: readonly TemplateItem[];
};

export const VESSEL_TEMPLATES: readonly VesselTemplate[] = [
  COASTAL_CRUISING_YACHT,
  CHARTER_YACHT,
  SMALL_KEELBOAT,
  TRAINING_DINGHY,
  SAFETY_BOAT,
  INLAND_MOTOR_CRUISER,
];
