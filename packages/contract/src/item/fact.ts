/** Dated statements about an item. Only ever added; a wrong one is struck out by a correction that names it. */
import * as z from 'zod';
import { CalendarDay, Id, Instant, orNull, pageOf, RecordedDate, words } from '../shared.ts';

export const FACT_CODES = [
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

export const TEST_CODES = [
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

export const CAPACITY_CODES = [
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

const OUTCOME_CODES = ['passed', 'failed', 'partly'] as const;

export const EVIDENCE_CODES = ['certificate', 'stamped', 'printed', 'record', 'owner_statement', 'unknown'] as const;

const DoneBy = z
  .strictObject({
    name: words(160).optional(),
    capacity: z
      .enum(CAPACITY_CODES)
      .optional()
      .meta({ description: 'In what capacity; a rule’s clock is reset only by the competence it asks for.' }),
    certificate: words(160).optional(),
  })
  .meta({ id: 'DoneBy' });

const statement = {
  fact: z.enum(FACT_CODES),
  on: RecordedDate,
  outcome: z.enum(OUTCOME_CODES).default('passed'),
  test: z
    .enum(TEST_CODES)
    .optional()
    .meta({ description: 'Which test, service or examination, where a rule tells them apart.' }),
  doneBy: DoneBy.optional(),
  evidence: z.enum(EVIDENCE_CODES).default('unknown'),
  until: CalendarDay.optional().meta({
    description:
      '`extended`: the last day the permission covers. An inspection or test that did not pass: the day by which whoever did it wants it put right.',
  }),
  reading: z
    .strictObject({ value: z.number().min(0).max(10_000_000), unit: z.enum(['hours', 'sea_miles']) })
    .optional()
    .meta({ description: '`meter` only: what the meter read.' }),
  readOn: CalendarDay.optional().meta({
    description: '`manufactured` and `printed_expiry`: the day it was read on the thing aboard. Default: today.',
  }),
  note: words(2000).optional(),
  retracts: z.literal(true).optional().meta({
    description:
      'With `corrects`: strikes out and puts nothing in its place, as of a fact entered on the wrong thing. `fact` and `on` repeat what is struck out; say why in `note`.',
  }),
};

/** `corrects` names the fact that this one strikes out and stands in for. */
export const NewFact = z
  .strictObject({
    ...statement,
    corrects: Id.optional().meta({ description: 'The fact that this one strikes out and stands in for.' }),
  })
  .meta({
    id: 'NewFact',
    example: {
      fact: 'serviced',
      on: '2026-03-18',
      doneBy: { capacity: 'liferaft_service_station' },
      evidence: 'certificate',
    },
  });
export type NewFact = z.infer<typeof NewFact>;

export const FACT_EXAMPLE = {
  id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
  itemId: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b',
  fact: 'serviced',
  on: '2025-11-04',
  outcome: 'passed',
  doneBy: { capacity: 'liferaft_service_station' },
  evidence: 'certificate',
  recordedAt: '2026-11-25T08:12:00Z',
  recordedBy: 'api_key:0198c5a1-0000-7000-8000-000000000001',
  corrects: null,
  struckOutBy: null,
};

export const Fact = z
  .object({
    id: Id,
    itemId: Id,
    ...statement,
    outcome: z.enum(OUTCOME_CODES),
    evidence: z.enum(EVIDENCE_CODES),
    recordedAt: Instant.meta({ description: 'When it was learned.' }),
    recordedBy: z.string(),
    corrects: orNull(Id),
    struckOutBy: orNull(Id).meta({ description: 'The correction that struck this fact out; it stays visible.' }),
  })

  .meta({ id: 'Fact', example: FACT_EXAMPLE });
export type Fact = z.infer<typeof Fact>;
export const FactPage = pageOf(Fact, 'FactPage');
export type FactPage = z.infer<typeof FactPage>;

const ownName = z.string().min(1).max(60).optional();

/** A fact that is not stored, for `POST /v1/due-dates/explain`. */
export const UnstoredFact = z
  .strictObject({
    ...statement,
    id: ownName.meta({ description: 'How the answer and `corrects` refer to it; its place in the list where absent.' }),
    recordedAt: Instant.optional(),
    readOn: statement.readOn.meta({
      description:
        '`manufactured` and `printed_expiry`: the day it was read on the thing aboard. Absent: taken from the other facts. The last of several plates is on the last unit; one alone on what was first worked on after it was made; of several printed dates the last is on what a replacement, a battery change or a renewal survey left aboard. Else the date on the plate itself places it.',
    }),
    corrects: ownName.meta({ description: 'The `id` of the fact in this request that it strikes out.' }),
  })
  .meta({ id: 'UnstoredFact' });
export type UnstoredFact = z.infer<typeof UnstoredFact>;
