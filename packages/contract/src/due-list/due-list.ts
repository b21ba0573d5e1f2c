/** Everything with a date, ordered by the last day on which nothing is wrong yet. */
import * as z from 'zod';
import { Action, Source, StandingCode, WeightCode } from '../item/obligation.ts';
import { CalendarDay, Id, NextCursor } from '../shared.ts';
import { SchemeCode } from '../vessel/vessel.ts';

export const WeightCounts = z
  .object({
    law: z.int(),
    certificate: z.int(),
    insurer: z.int(),
    maker: z.int(),
    common_practice: z.int(),
    own: z.int(),
  })
  .meta({ id: 'WeightCounts', description: 'Advice is never mixed into the count of legal lapses.' });
export type WeightCounts = z.infer<typeof WeightCounts>;

export const StandingCounts = z
  .object({ overdue: WeightCounts, due: WeightCounts, in_date: WeightCounts, unknown: WeightCounts })
  .meta({ id: 'StandingCounts' });
export type StandingCounts = z.infer<typeof StandingCounts>;

export const DueSource = z.enum(['obligation']);

export const DueRow = z
  .object({
    source: DueSource.meta({ description: 'What kind of thing is due.' }),
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
    days: z
      .int()
      .optional()
      .meta({ description: 'Whole days from the day asked to `overdueAfter`; negative when overdue.' }),
    sentence: z.string(),
    reference: Source,
  })
  .meta({ id: 'DueRow' });
export type DueRow = z.infer<typeof DueRow>;

export const DueList = z
  .object({
    asOf: CalendarDay,
    counts: StandingCounts.meta({ description: 'The whole organisation on that day, whatever the filters.' }),
    vesselsOverdue: z.int(),
    items: z.array(DueRow),
    nextCursor: NextCursor,
  })
  .meta({ id: 'DueList' });
export type DueList = z.infer<typeof DueList>;
