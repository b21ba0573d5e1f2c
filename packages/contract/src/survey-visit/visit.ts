/** A survey visit: one attendance aboard, with the route walked. Completed, it is sealed. */
import * as z from 'zod';
import { ZoneCode } from '../finding/codes.ts';
import { CalendarDay, Id, Instant, orNull, pageOf, words } from '../shared.ts';
import { CraftCode, Instrument, PurposeCode, VisitPerson, WaterCode } from './codes.ts';

const about = {
  purpose: PurposeCode,
  client: words(160).optional().meta({ description: 'Who asked for it.' }),
  instructions: words(2000).optional(),
  persons: z.array(VisitPerson).max(20).default([]),
  place: words(160).optional().meta({ example: 'Tangle Quay, hard standing' }),
  water: WaterCode,
  ashoreSince: CalendarDay.optional(),
  weather: words(300).optional(),
  hoursAboard: z.number().min(0).max(200).optional(),
  ownerAttended: z.boolean().default(false),
  instruments: z.array(Instrument).max(20).default([]),
};

const EXAMPLE = {
  purpose: 'condition',
  water: 'ashore',
  startedOn: '2026-11-24',
  place: 'Tangle Quay, hard standing',
  persons: [{ name: 'Ines Vale', capacity: 'surveyor', qualification: 'Small craft surveyor, S-311' }],
};

export const NewVisit = z
  .strictObject({
    ...about,
    craft: CraftCode.default('sailing_yacht'),
    startedOn: CalendarDay.meta({ description: 'The day it began; not in the future.' }),
  })
  .meta({ id: 'NewVisit', example: EXAMPLE });
export type NewVisit = z.infer<typeof NewVisit>;

export const VisitChange = z
  .strictObject({
    ...about,
    purpose: PurposeCode.optional(),
    water: WaterCode.optional(),
    persons: z.array(VisitPerson).max(20).optional(),
    ownerAttended: z.boolean().optional(),
    instruments: z.array(Instrument).max(20).optional(),
    client: orNull(words(160)).optional(),
    instructions: orNull(words(2000)).optional(),
    place: orNull(words(160)).optional(),
    ashoreSince: orNull(CalendarDay).optional(),
    weather: orNull(words(300)).optional(),
    hoursAboard: orNull(z.number().min(0).max(200)).optional(),
  })
  .meta({
    id: 'VisitChange',
    description: 'What is absent stays; `null` takes it away.',
    example: { hoursAboard: 4.5, weather: 'dry, 6 °C' },
  });
export type VisitChange = z.infer<typeof VisitChange>;

const RouteZone = z.strictObject({ zone: ZoneCode, name: words(80) }).meta({ id: 'RouteZone' });

const VISIT_EXAMPLE = {
  id: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8091',
  vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
  craft: 'sailing_yacht',
  ...EXAMPLE,
  ownerAttended: false,
  instruments: [],
  state: 'open',
  route: [{ zone: 'papers', name: 'Papers and identity' }],
};

export const Visit = z
  .object({
    id: Id,
    vessel: z.object({ id: Id, name: z.string() }),
    craft: CraftCode,
    ...about,
    persons: z.array(VisitPerson),
    ownerAttended: z.boolean(),
    instruments: z.array(Instrument),
    startedOn: CalendarDay,
    state: z.enum(['open', 'completed']),
    completedOn: CalendarDay.optional(),
    sealedHash: z.string().optional().meta({ description: 'SHA-256 of the sealed copy, in hexadecimal.' }),
    route: z
      .array(RouteZone)
      .meta({ description: 'The places in the order in which they are walked, as they were when the visit began.' }),
  })
  .meta({ id: 'Visit', example: VISIT_EXAMPLE });
export type Visit = z.infer<typeof Visit>;
export const VisitPage = pageOf(Visit, 'VisitPage');
export type VisitPage = z.infer<typeof VisitPage>;

export const SurveyRoute = z.strictObject({ zones: z.array(RouteZone).min(1).max(80) }).meta({
  id: 'SurveyRoute',
  description: 'A route of an organisation’s own, or the house route where it has none.',
  example: { zones: [{ zone: 'papers', name: 'Papers and identity' }] },
});
export type SurveyRoute = z.infer<typeof SurveyRoute>;

export const NewAddendum = z
  .strictObject({ name: words(160).meta({ description: 'Who adds it.' }), words: words(4000), reason: words(1000) })
  .meta({
    id: 'NewAddendum',
    example: {
      name: 'Ines Vale',
      words: 'The serial number of the regulator is 4471, not 4417.',
      reason: 'Misread on the day.',
    },
  });
export type NewAddendum = z.infer<typeof NewAddendum>;

export const Addendum = NewAddendum.extend({ id: Id, recordedAt: Instant, recordedBy: z.string() }).meta({
  id: 'Addendum',
  example: {
    ...{ id: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8099', name: 'Ines Vale', words: 'The serial number is 4471, not 4417.' },
    ...{
      reason: 'Misread on the day.',
      recordedAt: '2026-11-25T09:00:00Z',
      recordedBy: 'person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
    },
  },
});
export type Addendum = z.infer<typeof Addendum>;

export const SealedCopy = z
  .object({
    sealed: z
      .string()
      .meta({ description: 'What was sealed, as text in the canonical form of RFC 8785. Hash it as it stands.' }),
    hash: z.string().meta({ description: 'SHA-256 of that text in UTF-8, in hexadecimal.' }),
    addenda: z.array(Addendum).meta({ description: 'Corrections that came afterwards; they are not under the hash.' }),
  })
  .meta({ id: 'SealedCopy', example: { sealed: '{"visit":{}}', hash: 'a'.repeat(64), addenda: [] } });
export type SealedCopy = z.infer<typeof SealedCopy>;
