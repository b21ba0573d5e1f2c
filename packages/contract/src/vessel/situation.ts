/** What a vessel is doing, and what happened to her. */
import * as z from 'zod';
import { CalendarDay, Id, Instant, pageOf, words } from '../shared.ts';

const situation = {
  from: CalendarDay.meta({ description: 'Holds from this day until the next situation begins.' }),
  place: z.enum(['afloat', 'ashore']),
  use: z.enum(['in_commission', 'laid_up', 'out_of_service']),
  dismantled: z.boolean().default(false),
  underRepair: z.boolean().default(false),
};

/** What a rule may read of a situation. */
export const SITUATION_PARTS = ['place', 'use', 'dismantled', 'underRepair'] as const;

export const NewSituation = z
  .strictObject(situation)
  .meta({ id: 'NewSituation', example: { from: '2026-11-02', place: 'ashore', use: 'laid_up' } });
export type NewSituation = z.infer<typeof NewSituation>;

export const Situation = z
  .object({ id: Id, ...situation, dismantled: z.boolean(), underRepair: z.boolean(), recordedAt: Instant })
  .meta({
    id: 'Situation',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      from: '2026-11-02',
      place: 'ashore',
      use: 'laid_up',
      dismantled: false,
      underRepair: false,
      recordedAt: '2026-11-25T08:12:00Z',
    },
  });
export type Situation = z.infer<typeof Situation>;
export const SituationPage = pageOf(Situation, 'SituationPage');
export type SituationPage = z.infer<typeof SituationPage>;

export const EVENT_CODES = [
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

const event = {
  event: z.enum(EVENT_CODES),
  on: CalendarDay,
  planned: z.boolean().default(false).meta({ description: 'Still to come: an inspection booked, a race entered.' }),
  note: words(2000).optional(),
};

export const NewVesselEvent = z
  .strictObject(event)
  .meta({ id: 'NewVesselEvent', example: { event: 'inspection', on: '2027-03-18', planned: true } });
export type NewVesselEvent = z.infer<typeof NewVesselEvent>;

export const VesselEvent = z.object({ id: Id, ...event, planned: z.boolean(), recordedAt: Instant }).meta({
  id: 'VesselEvent',
  example: {
    id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
    event: 'inspection',
    on: '2027-03-18',
    planned: true,
    recordedAt: '2026-11-25T08:12:00Z',
  },
});
export type VesselEvent = z.infer<typeof VesselEvent>;
export const VesselEventPage = pageOf(VesselEvent, 'VesselEventPage');
export type VesselEventPage = z.infer<typeof VesselEventPage>;
