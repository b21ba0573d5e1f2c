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

export const NewSituation = z.strictObject(situation).meta({ id: 'NewSituation' });
export type NewSituation = z.infer<typeof NewSituation>;

export const Situation = z
  .object({ id: Id, ...situation, dismantled: z.boolean(), underRepair: z.boolean(), recordedAt: Instant })
  .meta({ id: 'Situation' });
export type Situation = z.infer<typeof Situation>;
export const SituationPage = pageOf(Situation, 'SituationPage');
export type SituationPage = z.infer<typeof SituationPage>;

export const EVENT_CODES = [
  'inspection',
  'liferaft_service',
  'race_start',
  'grounding',
  'lightning',
  'fire',
  'structural_repair',
  'change_of_owner',
  'gale',
] as const;

const event = {
  event: z.enum(EVENT_CODES),
  on: CalendarDay,
  planned: z.boolean().default(false).meta({ description: 'Still to come: an inspection booked, a race entered.' }),
  note: words(2000).optional(),
};

export const NewVesselEvent = z.strictObject(event).meta({ id: 'NewVesselEvent' });
export type NewVesselEvent = z.infer<typeof NewVesselEvent>;

export const VesselEvent = z
  .object({ id: Id, ...event, planned: z.boolean(), recordedAt: Instant })
  .meta({ id: 'VesselEvent' });
export type VesselEvent = z.infer<typeof VesselEvent>;
export const VesselEventPage = pageOf(VesselEvent, 'VesselEventPage');
export type VesselEventPage = z.infer<typeof VesselEventPage>;
