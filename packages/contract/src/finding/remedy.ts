/** The steps of a remedy, from what is proposed to what somebody else has looked at. */
import * as z from 'zod';
import { NewFact } from '../item/fact.ts';
import { CalendarDay, Id, words } from '../shared.ts';
import { DoneBy, Evidence, TradeCode } from './codes.ts';
import { Estimate, NewFinding } from './finding.ts';

const reason = words(1000).meta({ description: 'Why.' });
const work = words(1000).meta({
  description: 'What is to be done, or was.',
  example: 'Hose replaced and the joint tested',
});
const put = {
  reviewOn: CalendarDay.meta({
    description: 'When somebody looks at it again; no later than the organisation allows.',
  }),
  responsible: words(160).meta({ description: 'The person who answers for it, by name.' }),
  reason,
};
const evidence = z.array(Evidence).max(20).default([]);

export const RemedyStep = z
  .discriminatedUnion(
    'step',
    [
      z.strictObject({ step: z.literal('propose'), work, trade: TradeCode.optional(), estimate: Estimate.optional() }),
      z.strictObject({
        step: z.literal('plan'),
        work: work.optional(),
        forDay: CalendarDay.optional(),
        trade: TradeCode.optional(),
        responsible: words(160).optional(),
      }),
      z.strictObject({ step: z.literal('begin'), words: words(1000).optional() }),
      z.strictObject({
        step: z.literal('report_done'),
        work,
        doneOn: CalendarDay,
        doneBy: DoneBy.optional(),
        evidence,
        facts: z
          .array(z.strictObject({ itemId: Id, fact: NewFact }))
          .max(10)
          .default([])
          .meta({
            description: 'What the work did to things aboard: recorded in the same act, so that their dates move.',
          }),
      }),
      z.strictObject({ step: z.literal('defer'), until: CalendarDay, ...put }),
      z.strictObject({ step: z.literal('accept'), ...put }),
      z.strictObject({ step: z.literal('enter_in_error'), reason }),
      z.strictObject({ step: z.literal('reopen'), reason }),
    ],
    'must be one of propose, plan, begin, report_done, defer, accept, enter_in_error, reopen',
  )
  .meta({ id: 'RemedyStep', example: { step: 'propose', work: 'Replace the hose', trade: 'gas_engineer' } });
export type RemedyStep = z.infer<typeof RemedyStep>;

export const Verification = z
  .strictObject({
    right: z.boolean().meta({ description: '`false` sends it back to be done again.' }),
    words: words(1000).optional().meta({ description: 'Asked for where it is not right.' }),
    evidence: evidence.meta({ description: 'Asked for where it is right.' }),
  })
  .meta({
    id: 'Verification',
    example: { right: true, evidence: [{ kind: 'looked', words: 'New hose, dated 2026, both clips tight' }] },
  });
export type Verification = z.infer<typeof Verification>;

export const FindingMerge = z
  .strictObject({ into: Id.meta({ description: 'The finding that stays, of the same vessel.' }), reason })
  .meta({
    id: 'FindingMerge',
    example: { into: '0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091', reason: 'The same crack, seen twice.' },
  });
export type FindingMerge = z.infer<typeof FindingMerge>;

export const FindingSplit = NewFinding.omit({ on: true, visitId: true })
  .extend({ reason })
  .meta({
    id: 'FindingSplit',
    example: {
      zone: 'gas_installation',
      what: 'Hose clip at the regulator loose',
      hazard: 'fire_and_gas',
      urgency: 'before_use',
      reason: 'Two things, and not the same work.',
    },
  });
export type FindingSplit = z.infer<typeof FindingSplit>;

export const FindingTerms = z
  .strictObject({
    withinWeeksDays: z
      .int()
      .min(1)
      .max(183)
      .meta({ description: 'Days that `within_weeks` leaves where the surveyor named no day.', example: 28 }),
    putOffAtMostDays: z
      .int()
      .min(1)
      .max(1830)
      .meta({ description: 'How far ahead a review may be put.', example: 365 }),
    secondPairOfEyes: z.boolean().meta({
      description:
        'Whether somebody other than whoever did the work must verify it. Off, such findings read “closed, not independently checked”.',
    }),
  })
  .meta({
    id: 'FindingTerms',
    description: 'House conventions of the organisation; no source.',
    example: { withinWeeksDays: 28, putOffAtMostDays: 365, secondPairOfEyes: true },
  });
export type FindingTerms = z.infer<typeof FindingTerms>;
