/**
 * What a rule asks about an item that no dated fact holds: its standard, how long its season is, the
 * maker's own interval.
 */
import type { RecordedDate } from '../calendar/recorded-date.ts';
import { parseRecordedDate } from '../calendar/recorded-date.ts';
import { FIGURES } from './attributes/figures.ts';
import { PARTICULARS } from './attributes/particulars.ts';

export const ATTRIBUTE_IDS = [
  'makerIntervalMonths',
  'makerLifeMonths',
  'insurerLifeMonths',
  'standard',
  'extendedInterval',
  'conventionShip',
  'seasonMonths',
  'operatesOnlyMonthsMeanDailyMinAbove0C',
  'cylinderTestValidTo',
  'dryStoredOffSeason',
  'packedContentsExpireOn',
  'pressure',
  'cylinderMaterial',
  'hosesFittedOn',
  'expiryLessOneDay',
  'anniversaryDate',
  'passengerShip',
  'registrationMonths',
  'oilChangeHours',
  'impellerHours',
  'solasApproved',
  'contentsExpireOn',
  'saltWaterOverThreeMonths',
  'insurerIntervalMonths',
  'multiSeason',
  'fittingMaterial',
  'insurerFirstSurveyMonths',
  'coolantIntervalMonths',
  'coolantHours',
  'beltInspectionHours',
  'beltLifeMonths',
  'beltHours',
  'hoseLifeCountsFrom',
] as const;
export type AttributeId = (typeof ATTRIBUTE_IDS)[number];

export type Attributes = Readonly<Record<string, string | number | boolean>>;

/** `months`, `hours`: a whole number above nought. `date`: `YYYY-MM-DD`, `YYYY-MM` or `YYYY`. */
export type AttributeType =
  | { readonly kind: 'months' }
  | { readonly kind: 'hours' }
  | { readonly kind: 'yes_no' }
  | { readonly kind: 'date' }
  | { readonly kind: 'choice'; readonly choices: readonly { readonly value: string; readonly words: string }[] };

export type Attribute = {
  readonly id: AttributeId;
  readonly type: AttributeType;
  /** What it is, to head a field or stand before a colon: "months a year that the vessel operates". */
  readonly words: string;
  readonly whereFound: string;
};

/** Every attribute that an item kind may have, by its id. */
export const ATTRIBUTES: { readonly [Id in AttributeId]: Attribute } = { ...FIGURES, ...PARTICULARS };

/** A whole number of months or hours above nought; `null` when not recorded or not that. */
export function wholeNumberOf(attributes: Attributes, id: AttributeId): number | null {
  const value = attributes[id];
  return typeof value === 'number' && Number.isInteger(value) && value > 0 ? value : null;
}

/** A date attribute; `null` when not recorded or no real date. */
export function dateOf(attributes: Attributes, id: AttributeId): RecordedDate | null {
  const value = attributes[id];
  return typeof value === 'string' ? parseRecordedDate(value) : null;
}
