/**
 * What a rule asks about an item that no dated fact holds: its standard, how long its season is, the
 * maker's own interval.
 */
import type { RecordedDate } from '../calendar/recorded-date.ts';
import { parseRecordedDate } from '../calendar/recorded-date.ts';

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

const MONTHS: AttributeType = { kind: 'months' };
const HOURS: AttributeType = { kind: 'hours' };
const YES_NO: AttributeType = { kind: 'yes_no' };
const DATE: AttributeType = { kind: 'date' };

/** Every attribute that an item kind may have, by its id. */
export const ATTRIBUTES: { readonly [Id in AttributeId]: Attribute } = {
  makerIntervalMonths: {
    id: 'makerIntervalMonths',
    type: MONTHS,
    words: "maker's interval in months",
    whereFound: "the maker's manual or the last service certificate",
  },
  makerLifeMonths: {
    id: 'makerLifeMonths',
    type: MONTHS,
    words: 'life in months that the maker gives it',
    whereFound: "the maker's manual or the label",
  },
  insurerLifeMonths: {
    id: 'insurerLifeMonths',
    type: MONTHS,
    words: "life in months that the vessel's own insurer allows",
    whereFound: "the insurer's letter or the policy's conditions",
  },
  standard: {
    id: 'standard',
    type: {
      kind: 'choice',
      choices: [
        { value: 'solas', words: 'SOLAS certificated' },
        { value: 'iso_9650', words: 'ISO 9650' },
        { value: 'other', words: 'another standard or none' },
      ],
    },
    words: 'standard that the raft was built to',
    whereFound: 'the plate on the container and the certificate',
  },
  extendedInterval: {
    id: 'extendedInterval',
    type: YES_NO,
    words: 'raft type-approved for extended service intervals',
    whereFound: 'the type-approval certificate',
  },
  conventionShip: {
    id: 'conventionShip',
    type: YES_NO,
    words: 'Safety Convention ship',
    whereFound: "the vessel's certificates",
  },
  seasonMonths: {
    id: 'seasonMonths',
    type: MONTHS,
    words: 'months a year that the vessel operates',
    whereFound: 'the operating schedule',
  },
  operatesOnlyMonthsMeanDailyMinAbove0C: {
    id: 'operatesOnlyMonthsMeanDailyMinAbove0C',
    type: YES_NO,
    words: 'operates only in months whose mean daily minimum is above 0 °C',
    whereFound: 'the operating schedule and climate tables',
  },
  cylinderTestValidTo: {
    id: 'cylinderTestValidTo',
    type: DATE,
    words: "day to which the gas cylinder's hydrostatic test is valid",
    whereFound: 'the stamp on the cylinder or the service certificate',
  },
  dryStoredOffSeason: {
    id: 'dryStoredOffSeason',
    type: YES_NO,
    words: 'raft stored dry out of season',
    whereFound: 'the storage record',
  },
  packedContentsExpireOn: {
    id: 'packedContentsExpireOn',
    type: DATE,
    words: 'earliest expiry among the things packed in the raft',
    whereFound: 'the list of contents on the last service certificate',
  },
  pressure: {
    id: 'pressure',
    type: {
      kind: 'choice',
      choices: [
        { value: 'stored_pressure', words: 'stored pressure (it has a gauge)' },
        { value: 'cartridge', words: 'cartridge operated' },
      ],
    },
    words: 'how the agent is driven out',
    whereFound: 'the label',
  },
  cylinderMaterial: {
    id: 'cylinderMaterial',
    type: {
      kind: 'choice',
      choices: [
        { value: 'mild_steel', words: 'mild steel' },
        { value: 'stainless_steel', words: 'stainless steel' },
        { value: 'aluminium', words: 'aluminium' },
      ],
    },
    words: 'material of the cylinder',
    whereFound: 'the label',
  },
  hosesFittedOn: {
    id: 'hosesFittedOn',
    type: DATE,
    words: "day on which the system's hoses were fitted",
    whereFound: 'the installation or service report',
  },
  expiryLessOneDay: {
    id: 'expiryLessOneDay',
    type: YES_NO,
    words: 'issuer dates the expiry one day before the corresponding day',
    whereFound: 'an earlier certificate beside the report of its survey',
  },
  anniversaryDate: {
    id: 'anniversaryDate',
    type: DATE,
    words: 'next anniversary date of the certificate',
    whereFound: 'the certificate: day and month of its expiry, unless another is endorsed on it',
  },
  passengerShip: {
    id: 'passengerShip',
    type: YES_NO,
    words: 'passenger ship under the convention',
    whereFound: "the vessel's certificates",
  },
  registrationMonths: {
    id: 'registrationMonths',
    type: MONTHS,
    words: "months after which the beacon's own registry wants the details confirmed",
    whereFound: "the registry's letter or website",
  },
  oilChangeHours: {
    id: 'oilChangeHours',
    type: HOURS,
    words: "maker's running hours between oil and filter changes",
    whereFound: "the engine maker's book",
  },
  impellerHours: {
    id: 'impellerHours',
    type: HOURS,
    words: "maker's running hours between impeller changes",
    whereFound: "the engine maker's book",
  },
  solasApproved: {
    id: 'solasApproved',
    type: YES_NO,
    words: 'approved under SOLAS',
    whereFound: 'the label',
  },
  contentsExpireOn: {
    id: 'contentsExpireOn',
    type: DATE,
    words: 'earliest expiry among its contents',
    whereFound: 'the packs themselves, or the list kept with them',
  },
  saltWaterOverThreeMonths: {
    id: 'saltWaterOverThreeMonths',
    type: YES_NO,
    words: 'in salt water for more than three months in any twelve',
    whereFound: 'the operating schedule or the log book',
  },
  insurerIntervalMonths: {
    id: 'insurerIntervalMonths',
    type: MONTHS,
    words: "months between surveys that the vessel's own insurer asks for",
    whereFound: "the insurer's letter or the policy's conditions",
  },
  multiSeason: {
    id: 'multiSeason',
    type: YES_NO,
    words: 'multi-season antifouling',
    whereFound: "the tin or the yard's invoice",
  },
  fittingMaterial: {
    id: 'fittingMaterial',
    type: {
      kind: 'choice',
      choices: [
        { value: 'plain_brass', words: 'plain brass' },
        { value: 'dezincification_resistant_brass', words: 'dezincification-resistant brass' },
        { value: 'bronze', words: 'bronze' },
        { value: 'composite', words: 'composite' },
        { value: 'stainless_steel', words: 'stainless steel' },
      ],
    },
    words: 'what the fitting is made of',
    whereFound: "cast or stamped on it, or the yard's invoice",
  },
  insurerFirstSurveyMonths: {
    id: 'insurerFirstSurveyMonths',
    type: MONTHS,
    words: "age in months at which the vessel's own insurer first asks for a survey",
    whereFound: "the insurer's letter or the policy's conditions",
  },
  coolantIntervalMonths: {
    id: 'coolantIntervalMonths',
    type: MONTHS,
    words: "maker's months between coolant changes",
    whereFound: "the engine maker's book",
  },
  coolantHours: {
    id: 'coolantHours',
    type: HOURS,
    words: "maker's running hours between coolant changes",
    whereFound: "the engine maker's book",
  },
  beltInspectionHours: {
    id: 'beltInspectionHours',
    type: HOURS,
    words: "maker's running hours between inspections of the belts",
    whereFound: "the engine maker's book",
  },
  beltLifeMonths: {
    id: 'beltLifeMonths',
    type: MONTHS,
    words: "maker's months between belt changes",
    whereFound: "the engine maker's book",
  },
  beltHours: {
    id: 'beltHours',
    type: HOURS,
    words: "maker's running hours between belt changes",
    whereFound: "the engine maker's book",
  },
};

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
