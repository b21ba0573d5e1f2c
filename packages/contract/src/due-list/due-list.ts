/** Everything with a date, ordered by the last day on which nothing is wrong yet. */
import * as z from 'zod';
import { TradeCode, UrgencyCode } from '../finding/codes.ts';
import { Action, SOURCE_EXAMPLE, Source, StandingCode, WeightCode } from '../item/obligation.ts';
import { CalendarDay, Id, NextCursor } from '../shared.ts';
import { SchemeCode } from '../vessel/vessel.ts';

const WeightCounts = z
  .object({
    law: z.int(),
    certificate: z.int(),
    insurer: z.int(),
    maker: z.int(),
    common_practice: z.int(),
    own: z.int(),
  })
  .meta({ id: 'WeightCounts', description: 'Advice is never mixed into the count of legal lapses.' });

export const StandingCounts = z
  .object({
    overdue: WeightCounts,
    due: WeightCounts,
    in_date: WeightCounts,
    unknown: WeightCounts,
    suspended: WeightCounts.meta({
      description:
        'Suspended on the day, as the vessel is laid up in the way the clause says: counted here alone, whatever the date. What is due of it must be done before she returns to service.',
    }),
  })
  .meta({ id: 'StandingCounts', description: 'Each obligation is counted once.' });
export type StandingCounts = z.infer<typeof StandingCounts>;

const RuleSource = z.enum(['obligation', 'safety_notice']);
const MatterSource = z.enum(['finding', 'deferral', 'referral', 'limitation']);
export const DueSource = z.enum([...RuleSource.options, ...MatterSource.options]);

export const DueRow = z
  .object({
    source: RuleSource.meta({ description: 'What a rule asks, or what a safety notice asks.' }),
    vessel: z.object({ id: Id, name: z.string() }),
    item: z.object({ id: Id, kind: z.string(), label: z.string(), zone: z.string().optional(), quantity: z.int() }),
    ruleId: z.string(),
    duty: z.string(),
    scheme: SchemeCode,
    weight: WeightCode,
    action: Action,
    dueOn: CalendarDay.optional(),
    overdueAfter: CalendarDay.optional(),
    standing: StandingCode,
    suspendedFrom: CalendarDay.optional().meta({
      description:
        'The duty is suspended since then. Past its day it is not overdue but due before she returns to service.',
    }),
    suspendedUntil: CalendarDay.optional(),
    days: z
      .int()
      .optional()
      .meta({ description: 'Whole days from the day asked to `overdueAfter`; negative when overdue.' }),
    sentence: z.string(),
    reference: Source,
  })
  .meta({
    id: 'DueRow',
    example: {
      source: 'obligation',
      vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
      item: { id: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b', kind: 'liferaft', label: 'Liferaft, 6 persons', quantity: 1 },
      ruleId: 'raft-solas',
      duty: 'service',
      scheme: 'solas',
      weight: 'law',
      action: { kind: 'service', words: 'Have the liferaft serviced at an approved station' },
      dueOn: '2026-11-04',
      overdueAfter: '2026-11-04',
      standing: 'overdue',
      days: -21,
      sentence:
        'Serviced on 4 November 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 4 November 2026.',
      reference: SOURCE_EXAMPLE,
    },
  });
export type DueRow = z.infer<typeof DueRow>;

const MATTER_EXAMPLE = {
  source: 'finding',
  id: '0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091',
  vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
  zone: 'gas_installation',
  label: 'Gas hose at the cooker cracked where it bends',
  action: { words: 'Decide what is to be done' },
  urgency: 'before_use',
  trade: 'gas_engineer',
  dueOn: '2026-11-20',
  overdueAfter: '2026-11-20',
  standing: 'overdue',
  days: -5,
  sentence: 'To be dealt with before she is used again: due since it was said.',
};

export const DueMatter = z
  .object({
    source: MatterSource.meta({
      description:
        '`finding`: something not right. `deferral`: the review of what was put off or accepted. `referral`: a specialist who must look closer. `limitation`: what nobody could examine.',
    }),
    id: Id.meta({ description: 'Of the finding, referral or limitation.' }),
    vessel: z.object({ id: Id, name: z.string() }),
    zone: z.string(),
    label: z.string(),
    action: z.object({ words: z.string() }).meta({ id: 'MatterAction' }),
    urgency: UrgencyCode.optional(),
    trade: TradeCode.optional(),
    responsible: z.string().optional(),
    dueOn: CalendarDay.optional(),
    overdueAfter: CalendarDay.optional(),
    standing: StandingCode,
    days: z.int().optional(),
    sentence: z.string().meta({ description: 'Why that day.' }),
  })
  .meta({
    id: 'DueMatter',
    description: 'What waits for somebody besides what rules ask.',
    example: MATTER_EXAMPLE,
  });
export type DueMatter = z.infer<typeof DueMatter>;

export const MatterCounts = z.object({ overdue: z.int(), due: z.int(), in_date: z.int(), unknown: z.int() }).meta({
  id: 'MatterCounts',
  description: 'Findings and what else waits for somebody, counted apart: no rule stands behind them.',
});
export type MatterCounts = z.infer<typeof MatterCounts>;

export const DueList = z
  .object({
    asOf: CalendarDay,
    counts: StandingCounts.meta({
      description:
        'On that day, of what `vesselId`, `kind`, `scheme` and `weight` leave: however it stands and however far ahead.',
    }),
    vesselsOverdue: z.int(),
    matters: MatterCounts,
    items: z.array(z.union([DueRow, DueMatter]).meta({ example: MATTER_EXAMPLE })),
    nextCursor: NextCursor,
  })
  .meta({ id: 'DueList' });
export type DueList = z.infer<typeof DueList>;
