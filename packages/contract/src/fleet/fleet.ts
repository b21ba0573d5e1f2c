/** The dashboard's first paint: a row per vessel, and her marks on the fleet's horizon. */
import * as z from 'zod';
import { MatterCounts, StandingCounts } from '../due-list/due-list.ts';
import { SourceStatus } from '../item/obligation.ts';
import { Season } from '../organisation/season.ts';
import { CalendarDay, Id, NextCursor, orNull } from '../shared.ts';

const HorizonMark = z
  .object({
    on: CalendarDay.meta({ description: '`overdueAfter` of what falls on this day.' }),
    mark: z
      .enum(['service', 'replace', 'document'])
      .meta({ description: 'service, test or inspection; replace or withdraw; document.' }),
    standing: z.enum(['due', 'in_date']),
    things: z.array(
      z.object({
        ...{ itemId: Id, ruleId: z.string(), duty: z.string(), label: z.string(), words: z.string() },
        status: SourceStatus.meta({ description: 'How far the figure behind the day was checked.' }),
      }),
    ),
  })
  .meta({ id: 'HorizonMark' });

const NONE = { law: 0, certificate: 0, insurer: 0, maker: 0, common_practice: 0, own: 0 };

const Span = z
  .object({ from: CalendarDay, to: orNull(CalendarDay) })
  .meta({ id: 'DaySpan', description: 'First and last day; `null` where no end is on record.' });

export const FleetRow = z
  .object({
    vesselId: Id,
    name: z.string(),
    type: z.string().optional(),
    lengthOverallM: z.number().optional(),
    counts: StandingCounts,
    findings: z
      .object({
        ...{ before_use: z.int(), within_weeks: z.int(), this_season: z.int(), next_lay_up: z.int(), observe: z.int() },
      })
      .meta({ description: 'Open findings by urgency, those put off or accepted among them.' }),
    matters: MatterCounts.meta({ description: 'Findings, reviews, referrals and limitations by standing.' }),
    oldestOverdueAfter: CalendarDay.optional(),
    nextOverdueAfter: CalendarDay.optional(),
    laidUp: z.array(Span).meta({ description: 'When she is laid up, as far as it touches the horizon.' }),
    ashore: z.array(Span).meta({ description: 'When she stands ashore, likewise.' }),
    haulOuts: z
      .array(z.object({ on: CalendarDay, planned: z.boolean() }))
      .meta({ description: 'The days on which she comes out of the water, as recorded or planned.' }),
    marks: z.array(HorizonMark),
  })
  .meta({
    id: 'FleetRow',
    example: {
      vesselId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
      name: 'Marsh Harrier',
      type: 'sloop',
      lengthOverallM: 9.6,
      counts: {
        overdue: { ...NONE, law: 1 },
        due: NONE,
        in_date: { ...NONE, law: 2, maker: 4 },
        unknown: NONE,
        suspended: NONE,
      },
      findings: { before_use: 1, within_weeks: 0, this_season: 2, next_lay_up: 0, observe: 0 },
      matters: { overdue: 1, due: 0, in_date: 2, unknown: 0 },
      oldestOverdueAfter: '2026-11-04',
      nextOverdueAfter: '2027-03-31',
      laidUp: [{ from: '2026-11-02', to: null }],
      ashore: [{ from: '2026-11-02', to: null }],
      haulOuts: [{ on: '2027-10-20', planned: true }],
      marks: [
        {
          on: '2027-03-31',
          mark: 'replace',
          standing: 'in_date',
          things: [
            {
              itemId: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b',
              ruleId: 'flare-usrec',
              duty: 'replacement',
              label: 'Hand flares, red',
              words: 'Replace the flares',
              status: 'read',
            },
          ],
        },
      ],
    },
  });
export type FleetRow = z.infer<typeof FleetRow>;

export const Fleet = z
  .object({
    organisation: z.string(),
    asOf: CalendarDay,
    until: CalendarDay,
    season: z.union([Season, z.null()]).meta({ description: 'When the boats are used most; see `/v1/season`.' }),
    items: z.array(FleetRow),
    nextCursor: NextCursor,
  })
  .meta({ id: 'Fleet' });
export type Fleet = z.infer<typeof Fleet>;
