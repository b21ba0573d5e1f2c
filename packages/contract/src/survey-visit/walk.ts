/** What a visit says, place by place. */
import * as z from 'zod';
import { EvidenceFile } from '../evidence/evidence.ts';
import { SeenCode, TradeCode, UrgencyCode, ZoneCode } from '../finding/codes.ts';
import { SourceStatus } from '../item/obligation.ts';
import { CalendarDay, Id, Instant, pageOf, words } from '../shared.ts';
import { LimitationReasonCode, MeasureCode, ZoneAnswerCode } from './codes.ts';

export const NewZoneAnswer = z
  .strictObject({
    zone: ZoneCode,
    answer: ZoneAnswerCode,
    reason: LimitationReasonCode.optional().meta({ description: 'Asked for with `not_examined`.' }),
    words: words(2000).optional(),
  })
  .meta({
    id: 'NewZoneAnswer',
    example: { zone: 'papers', answer: 'sound', words: 'Number on the transom agrees with the papers.' },
  });
export type NewZoneAnswer = z.infer<typeof NewZoneAnswer>;

export const ZoneAnswer = NewZoneAnswer.extend({ id: Id, recordedAt: Instant, recordedBy: z.string() }).meta({
  id: 'ZoneAnswer',
  example: {
    ...{ id: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8092', zone: 'papers', answer: 'sound' },
    ...{ recordedAt: '2026-11-24T10:00:00Z', recordedBy: 'person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e' },
  },
});
export type ZoneAnswer = z.infer<typeof ZoneAnswer>;

export const NewReading = z
  .strictObject({
    zone: ZoneCode,
    point: words(80).meta({
      description: 'The survey point: named the same at every visit.',
      example: 'port, frame 4, 300 mm below the waterline',
    }),
    measure: MeasureCode,
    value: z
      .number()
      .min(-1_000_000)
      .max(1_000_000)
      .optional()
      .meta({ description: 'Absent: not measured, which is a gap and never nought.' }),
    instrument: z.string().max(20).optional().meta({ description: 'The `key` of an instrument of the visit.' }),
    words: words(500).optional(),
  })
  .meta({
    id: 'NewReading',
    example: { zone: 'hull_below_water', point: 'port, frame 4', measure: 'moisture', value: 18 },
  });
export type NewReading = z.infer<typeof NewReading>;

export const Reading = NewReading.extend({
  id: Id,
  unit: z.string(),
  takenOn: CalendarDay,
  check: z.enum(['in_check', 'out_of_check', 'unknown']).meta({
    description: 'Of the instrument, on the day. `unknown`: no instrument, or no day of its next check, is on record.',
  }),
  limit: z
    .object({
      within: z.boolean(),
      atLeast: z.number(),
      inWords: z.string(),
      source: z.object({ publication: z.string(), clause: z.string(), address: z.string(), status: SourceStatus }),
    })
    .optional()
    .meta({ description: 'What a publication asks of this survey point, and whether the reading keeps it.' }),
}).meta({
  id: 'Reading',
  example: {
    ...{
      id: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8093',
      zone: 'hull_below_water',
      point: 'port, frame 4',
      measure: 'moisture',
    },
    ...{ value: 18, unit: 'scale', takenOn: '2026-11-24', check: 'unknown' },
  },
});
export type Reading = z.infer<typeof Reading>;

export const NewLimitation = z
  .strictObject({
    zone: ZoneCode,
    itemId: Id.optional(),
    what: words(500).meta({
      description: 'What could not be examined or tested.',
      example: 'Chainplates behind the lining',
    }),
    reason: LimitationReasonCode,
    words: words(1000).optional(),
    trade: TradeCode.optional(),
  })
  .meta({
    id: 'NewLimitation',
    example: { zone: 'structure_inside', what: 'Chainplates behind the lining', reason: 'no_access_lining' },
  });
export type NewLimitation = z.infer<typeof NewLimitation>;

const LIMITATION_EXAMPLE = {
  id: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8094',
  vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
  zone: 'structure_inside',
  what: 'Chainplates behind the lining',
  reason: 'no_access_lining',
  imposedOn: '2026-11-24',
  visitId: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8091',
};

export const Limitation = NewLimitation.extend({
  id: Id,
  vessel: z.object({ id: Id, name: z.string() }),
  visitId: Id,
  imposedOn: CalendarDay,
  liftedOn: CalendarDay.optional().meta({ description: 'Until then the thing is not assessed, and never good.' }),
}).meta({ id: 'Limitation', example: LIMITATION_EXAMPLE });
export type Limitation = z.infer<typeof Limitation>;
export const LimitationPage = pageOf(Limitation, 'LimitationPage');
export type LimitationPage = z.infer<typeof LimitationPage>;

export const NewLimitationAnswer = z
  .strictObject({
    visitId: Id.meta({ description: 'The open visit that answers it: lifting it needs somebody who looks.' }),
    answer: z.enum(['lifted', 'still']),
    reason: LimitationReasonCode.optional().meta({ description: 'Asked for with `still`.' }),
    words: words(1000).optional().meta({ description: 'What was seen; asked for with `lifted`.' }),
  })
  .meta({
    id: 'NewLimitationAnswer',
    example: { visitId: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8091', answer: 'still', reason: 'no_access_lining' },
  });
export type NewLimitationAnswer = z.infer<typeof NewLimitationAnswer>;

export const NewReferral = z
  .strictObject({
    zone: ZoneCode,
    itemId: Id.optional(),
    findingId: Id.optional(),
    trade: TradeCode,
    what: words(500).meta({
      description: 'What the specialist is to look at.',
      example: 'Mast aloft and all terminals',
    }),
    dueOn: CalendarDay,
    responsible: words(160).optional().meta({ description: 'Who sees to it that somebody comes.' }),
  })
  .meta({
    id: 'NewReferral',
    example: { zone: 'mast_and_rigging', trade: 'rigger', what: 'Mast aloft and all terminals', dueOn: '2027-02-27' },
  });
export type NewReferral = z.infer<typeof NewReferral>;

export const ReferralResult = z
  .strictObject({
    on: CalendarDay,
    by: words(160).meta({ description: 'The specialist, by name.' }),
    qualification: words(160).optional(),
    words: words(2000).meta({ description: 'What they found.' }),
  })
  .meta({
    id: 'ReferralResult',
    example: { on: '2026-11-25', by: 'Orla Stave', words: 'Two terminals cracked, port lower and backstay.' },
  });
export type ReferralResult = z.infer<typeof ReferralResult>;

export const Referral = NewReferral.extend({
  id: Id,
  vessel: z.object({ id: Id, name: z.string() }),
  visitId: Id.optional(),
  askedOn: CalendarDay,
  result: ReferralResult.optional(),
}).meta({
  id: 'Referral',
  example: {
    ...{ id: '0198c5a6-3b10-7e21-9a3b-4c5d6e7f8095', vessel: LIMITATION_EXAMPLE.vessel, zone: 'mast_and_rigging' },
    ...{ trade: 'rigger', what: 'Mast aloft and all terminals', dueOn: '2027-02-27', askedOn: '2026-11-24' },
  },
});
export type Referral = z.infer<typeof Referral>;
export const ReferralPage = pageOf(Referral, 'ReferralPage');
export type ReferralPage = z.infer<typeof ReferralPage>;

const RouteFinding = z
  .object({
    id: Id,
    number: z.int(),
    what: z.string(),
    urgency: UrgencyCode,
    version: z.int(),
    seen: z
      .union([z.literal('new'), SeenCode])
      .optional()
      .meta({ description: 'What this visit saw of it; absent: not answered yet.' }),
    reads: z.string(),
  })
  .meta({ id: 'RouteFinding' });
const RouteLimitation = z
  .object({
    id: Id,
    what: z.string(),
    reason: LimitationReasonCode,
    imposedOn: CalendarDay,
    version: z.int(),
    answered: z.enum(['lifted', 'still', 'new']).optional(),
  })
  .meta({ id: 'RouteLimitation' });
const RouteReferral = z
  .object({ id: Id, what: z.string(), trade: TradeCode, dueOn: CalendarDay })
  .meta({ id: 'RouteReferral' });

const Stop = z
  .object({
    zone: ZoneCode,
    name: z.string(),
    answer: ZoneAnswer.optional(),
    findings: z.array(RouteFinding),
    limitations: z.array(RouteLimitation),
    referrals: z.array(RouteReferral),
    readings: z.array(Reading),
    points: z.array(z.string()).meta({
      description: 'Survey points of this place: measured on her before, or named by a publication.',
    }),
    evidence: z.array(EvidenceFile).meta({ description: 'Photographs and papers of this visit.' }),
  })
  .meta({ id: 'RouteStop' });

const Unanswered = z
  .object({ what: z.enum(['zone', 'finding', 'limitation']), id: z.string(), zone: z.string(), words: z.string() })
  .meta({ id: 'Unanswered' });

export const Walk = z
  .object({
    stops: z
      .array(Stop)
      .meta({ description: 'The places in walking order, with what the last visits left open there.' }),
    unanswered: z.array(Unanswered).meta({ description: 'What keeps the visit from being completed.' }),
  })
  .meta({
    id: 'Walk',
    example: {
      stops: [
        {
          zone: 'papers',
          name: 'Papers and identity',
          findings: [],
          limitations: [],
          referrals: [],
          readings: [],
          points: [],
          evidence: [],
        },
      ],
      unanswered: [{ what: 'zone', id: 'papers', zone: 'papers', words: 'Papers and identity' }],
    },
  });
export type Walk = z.infer<typeof Walk>;

export const VisitCompletion = z
  .strictObject({ completedOn: CalendarDay })
  .meta({ id: 'VisitCompletion', example: { completedOn: '2026-11-25' } });
export type VisitCompletion = z.infer<typeof VisitCompletion>;
