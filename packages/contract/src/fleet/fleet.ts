/** The dashboard's first paint: a row per vessel, and her marks on the fleet's horizon. */
import * as z from 'zod';
import { StandingCounts } from '../due-list/due-list.ts';
import { CalendarDay, Id, NextCursor, orNull } from '../shared.ts';

export const HorizonMark = z
  .object({
    on: CalendarDay.meta({ description: '`overdueAfter` of what falls on this day.' }),
    mark: z
      .enum(['service', 'replace', 'document'])
      .meta({ description: 'service, test or inspection; replace or withdraw; document.' }),
    standing: z.enum(['due', 'in_date']),
    things: z.array(z.object({ itemId: Id, ruleId: z.string(), label: z.string(), words: z.string() })),
  })
  .meta({ id: 'HorizonMark' });

export const FleetRow = z
  .object({
    vesselId: Id,
    name: z.string(),
    type: z.string().optional(),
    lengthOverallM: z.number().optional(),
    counts: StandingCounts,
    oldestOverdueAfter: CalendarDay.optional(),
    nextOverdueAfter: CalendarDay.optional(),
    laidUp: z.array(z.object({ from: CalendarDay, to: orNull(CalendarDay) })),
    marks: z.array(HorizonMark),
  })
  .meta({ id: 'FleetRow' });
export type FleetRow = z.infer<typeof FleetRow>;

export const Fleet = z
  .object({
    organisation: z.string(),
    asOf: CalendarDay,
    until: CalendarDay,
    items: z.array(FleetRow),
    nextCursor: NextCursor,
  })
  .meta({ id: 'Fleet' });
export type Fleet = z.infer<typeof Fleet>;
