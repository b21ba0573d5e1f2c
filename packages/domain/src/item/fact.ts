/**
 * One dated statement about an item. Facts are only ever added: a wrong one is struck out by a
 * later one that names it.
 */
import type { Day } from '../calendar/day.ts';
import type { RecordedDate } from '../calendar/recorded-date.ts';

export const FACT_KINDS = [
  'manufactured',
  'installed',
  'printed_expiry',
  'inspected',
  'serviced',
  'tested',
  'replaced',
  'overhauled',
  'extended',
  'activated',
  'moved',
  'meter',
  'withdrawn',
] as const;
export type FactKind = (typeof FACT_KINDS)[number];

/** `failed` and `partly` are kept and shown; neither resets a clock. */
export const OUTCOMES = ['passed', 'failed', 'partly'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** Which test, service or examination it was, where a rule tells them apart. */
export const TESTS = [
  'visual',
  'internal_examination',
  'extended_service',
  'hydrostatic',
  'gas_inflation',
  'necessary_additional_pressure',
  'working_pressure',
  'crack_test',
  'valve_examination',
  'onboard_check',
  'drain',
  'self_test',
  'function',
  'full_function',
  'examination',
  'weighing',
  'inflation_24_hours',
  'load_test',
  'bolt_drawn',
  'compass_swing',
  'out_of_water',
  'initial_survey',
  'annual_survey',
  'intermediate_survey',
  'renewal_survey',
  'tightness',
  'acceptance',
  'annual_test',
  'battery',
  'oil_and_filter',
  'impeller',
  'coolant',
  'belts',
  'belt_inspection',
  'details_confirmed',
  'discharge',
] as const;
export type TestKind = (typeof TESTS)[number];

/** In what capacity somebody acted. */
export const CAPACITIES = [
  'owner_or_skipper',
  'crew',
  'competent_person',
  'surveyor',
  'marine_inspector',
  'rigger',
  'gas_engineer',
  'marine_engineer',
  'electrician',
  'sailmaker',
  'yard',
  'liferaft_service_station',
  'lifejacket_service_station',
  'hydrostatic_release_service_station',
  'shore_based_maintenance_provider',
  'radio_surveyor',
  'fire_equipment_technician',
  'compass_adjuster',
  'measurement_surveyor',
  'registered_examiner',
  'maker',
] as const;
export type Capacity = (typeof CAPACITIES)[number];

/** What the date rests on, best first. */
export const EVIDENCE_KINDS = ['certificate', 'stamped', 'printed', 'record', 'owner_statement', 'unknown'] as const;
export type Evidence = (typeof EVIDENCE_KINDS)[number];

export type DoneBy = { readonly name?: string; readonly capacity?: Capacity; readonly certificate?: string };

export type Fact = {
  readonly id: string;
  readonly fact: FactKind;
  /** The day the statement is about; for `printed_expiry` the date printed, for `extended` the day of the record. */
  readonly on: RecordedDate;
  readonly outcome: Outcome;
  readonly test?: TestKind;
  readonly doneBy?: DoneBy;
  readonly evidence: Evidence;
  /**
   * `extended`: the last day that the authority's permission covers. An inspection or test that did not
   * pass: the last day by which whoever did it wants it put right.
   */
  readonly until?: Day;
  /** `meter` only: what the meter read. */
  readonly reading?: { readonly value: number; readonly unit: 'hours' | 'sea_miles' };
  /**
   * `manufactured` and `printed_expiry`: the day somebody read it on the thing aboard. It tells whether
   * the plate belongs to what is aboard now or to what was replaced.
   */
  readonly readOn?: Day;
  readonly note?: string;
  /** When we learned it: RFC 3339. */
  readonly recordedAt: string;
  /** The id of the earlier fact that this one strikes out and stands in for. */
  readonly corrects?: string;
  /** It strikes out and puts nothing in its place: what it names never was. Its own `fact` and `on` only repeat that. */
  readonly retracts?: true;
};
