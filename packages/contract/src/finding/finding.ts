/** A finding: something not right, which lives from the day it is first seen until it is verified put right. */
import * as z from 'zod';
import { CalendarDay, Id, Instant, Money, orNull, pageOf, words } from '../shared.ts';
import { Evidence, HazardCode, SeenCode, StateCode, TradeCode, UrgencyCode, ZoneCode } from './codes.ts';

export const Estimate = z
  .strictObject({ ...Money.shape, author: words(160).meta({ description: 'Who says so.', example: 'Ines Vale' }) })
  .meta({
    id: 'Estimate',
    description: 'What putting it right may cost.',
    example: { amount: '180.00', currency: 'EUR', author: 'Ines Vale' },
  });

const RemedialLimit = z
  .strictObject({
    on: CalendarDay,
    source: words(300).meta({
      description: 'The publication and clause, or the authority’s own paper.',
      example: 'SI 2023/1216 reg 20',
    }),
  })
  .meta({
    id: 'RemedialLimit',
    description: 'The last day that a rule or an authority leaves for it: nothing puts it off past that.',
  });

const particulars = {
  zone: ZoneCode,
  itemId: Id.optional().meta({ description: 'The thing aboard that it is about, where it is about one.' }),
  what: words(1000).meta({
    description: 'What is not right.',
    example: 'Gas hose at the cooker cracked where it bends',
  }),
  hazard: HazardCode,
  trade: TradeCode.optional(),
  estimate: Estimate.optional(),
  responsible: words(160).optional().meta({ description: 'Who answers for getting it done.' }),
  ruleId: z
    .string()
    .max(80)
    .optional()
    .meta({ description: 'The rule that it breaks: an `id` of `/v1/rules`.', example: 'lpg-hose' }),
  limit: RemedialLimit.optional(),
};

const urgency = {
  urgency: UrgencyCode,
  urgentBy: CalendarDay.optional().meta({ description: 'The surveyor’s own day; with `within_weeks` only.' }),
};

const EXAMPLE = {
  zone: 'gas_installation',
  what: 'Gas hose at the cooker cracked where it bends',
  hazard: 'fire_and_gas',
  trade: 'gas_engineer',
  urgency: 'before_use',
  on: '2026-11-20',
};

const evidence = z.array(Evidence).max(20).default([]);

export const NewFinding = z
  .strictObject({
    ...particulars,
    ...urgency,
    on: CalendarDay.meta({ description: 'The day on which it was seen; not in the future.' }),
    visitId: Id.optional().meta({ description: 'The open survey visit on which it was seen.' }),
    words: words(2000).optional().meta({ description: 'What was seen, where the line above is too short for it.' }),
    evidence,
  })
  .meta({ id: 'NewFinding', example: EXAMPLE });
export type NewFinding = z.infer<typeof NewFinding>;

export const FindingChange = z
  .strictObject({
    ...particulars,
    itemId: orNull(Id).optional(),
    zone: ZoneCode.optional(),
    what: particulars.what.optional(),
    hazard: HazardCode.optional(),
    trade: orNull(TradeCode).optional(),
    estimate: orNull(Estimate).optional(),
    responsible: orNull(words(160)).optional(),
    ruleId: orNull(z.string().max(80)).optional(),
    limit: orNull(RemedialLimit).optional(),
    urgency: UrgencyCode.optional().meta({
      description: 'Letting it down asks for a `reason`; `before_use` is not let down here.',
    }),
    urgentBy: urgency.urgentBy,
    reason: words(1000).optional(),
  })
  .meta({
    id: 'FindingChange',
    description: 'What is absent stays; `null` takes it away.',
    example: { trade: 'gas_engineer', responsible: 'Tomas Reef' },
  });
export type FindingChange = z.infer<typeof FindingChange>;

export const NewSighting = z
  .strictObject({
    seen: SeenCode,
    on: CalendarDay.meta({ description: 'The day on which somebody looked; not in the future.' }),
    visitId: Id.optional().meta({ description: 'The open survey visit that answers the finding.' }),
    words: words(2000).optional().meta({ description: 'What was seen; with `not_examined`, why not.' }),
    urgency: UrgencyCode.optional().meta({
      description: 'Where it has become more or less urgent. `before_use` is let down only by a surveyor.',
    }),
    urgentBy: urgency.urgentBy,
    evidence: evidence.meta({ description: 'Asked for with `gone`, which ends the finding.' }),
  })
  .meta({
    id: 'NewSighting',
    example: { seen: 'worse', on: '2026-11-24', words: 'The crack is through the outer cover now.' },
  });
export type NewSighting = z.infer<typeof NewSighting>;

const DueOfFinding = z
  .object({
    source: z
      .enum(['finding', 'deferral'])
      .optional()
      .meta({ description: '`deferral`: the review of what was put off or accepted.' }),
    on: CalendarDay.optional().meta({ description: 'Absent where there is no date to go by.' }),
    because: z.string(),
    standing: z.enum(['overdue', 'due', 'in_date', 'unknown']),
  })
  .meta({ id: 'DueOfFinding' });

const Remedy = z
  .object({
    state: StateCode,
    forDay: CalendarDay.optional(),
    doneOn: CalendarDay.optional(),
    reviewOn: CalendarDay.optional(),
    responsible: z.string().optional(),
    endedOn: CalendarDay.optional(),
    independent: z.boolean().optional().meta({ description: '`false`: closed, not independently checked.' }),
    into: Id.optional().meta({ description: 'The finding that it was merged into.' }),
  })
  .meta({ id: 'Remedy' });

const FINDING_EXAMPLE = {
  id: '0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091',
  number: 12,
  vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
  zone: 'gas_installation',
  what: EXAMPLE.what,
  hazard: 'fire_and_gas',
  trade: 'gas_engineer',
  urgency: 'before_use',
  urgencySince: '2026-11-20',
  firstSeenOn: '2026-11-20',
  lastSeenOn: '2026-11-20',
  lastSeen: 'new',
  remedy: { state: 'found' },
  reads: 'Found; nothing decided yet',
  due: {
    source: 'finding',
    on: '2026-11-20',
    because: 'To be dealt with before she is used again: due since it was said.',
    standing: 'overdue',
  },
  mayBe: ['proposed', 'planned', 'begun', 'reported_done', 'entered_in_error'],
};

export const Finding = z
  .object({
    id: Id,
    number: z.int().meta({ description: 'Counts the findings of the vessel, so that people can name them.' }),
    vessel: z.object({ id: Id, name: z.string() }),
    item: z.object({ id: Id, kind: z.string(), label: z.string() }).optional(),
    ...particulars,
    itemId: z.never().optional(),
    ...urgency,
    urgencySince: CalendarDay,
    firstSeenOn: CalendarDay,
    lastSeenOn: CalendarDay,
    lastSeen: z.union([z.literal('new'), SeenCode]),
    work: z.string().optional().meta({ description: 'What is to be done, as last proposed, planned or reported.' }),
    ownerSaid: z.object({ yes: z.boolean(), name: z.string(), on: CalendarDay, offer: z.string() }).optional().meta({
      description: 'What her owner last said to an estimate, and to which words. It decides nothing by itself.',
    }),
    remedy: Remedy,
    reads: z.string().meta({ description: 'How it stands, in words. The same on every page, list and export.' }),
    due: DueOfFinding.optional().meta({ description: 'Absent where the finding has ended.' }),
    mayBe: z.array(z.string()).meta({ description: 'The steps that lead on from here, whoever may take them.' }),
  })
  .omit({ itemId: true })
  .meta({ id: 'Finding', example: FINDING_EXAMPLE });
export type Finding = z.infer<typeof Finding>;

export const FindingPage = pageOf(Finding, 'FindingPage');
export type FindingPage = z.infer<typeof FindingPage>;

export const FindingEntry = z
  .object({
    id: Id,
    step: z.string().meta({ description: 'What was seen, said or done.', example: 'found' }),
    on: CalendarDay,
    recordedAt: Instant,
    recordedBy: z.string(),
    said: z.record(z.string(), z.unknown()).meta({ description: 'What the entry says, as it was written.' }),
    evidence: z.array(Evidence),
  })
  .meta({
    id: 'FindingEntry',
    example: {
      id: '0198c5a5-2f10-7d21-8a3b-4c5d6e7f8092',
      step: 'found',
      on: '2026-11-20',
      recordedAt: '2026-11-20T15:04:00Z',
      recordedBy: 'person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
      said: { what: EXAMPLE.what, urgency: 'before_use' },
      evidence: [],
    },
  });
export type FindingEntry = z.infer<typeof FindingEntry>;
export const FindingEntryPage = pageOf(FindingEntry, 'FindingEntryPage');
export type FindingEntryPage = z.infer<typeof FindingEntryPage>;

const AlikeFinding = z.object({ finding: Finding, because: z.array(z.string()) }).meta({
  id: 'AlikeFinding',
  example: { finding: FINDING_EXAMPLE, because: ['the same place', 'the same words: hose'] },
});
export const AlikeFindings = z
  .object({ items: z.array(AlikeFinding), nextCursor: z.null() })
  .meta({ id: 'AlikeFindings', description: 'At most ten, the likest first.' });
export type AlikeFindings = z.infer<typeof AlikeFindings>;
