/** What some of a vessel's things owe together, whichever of them: so many of each type and year. */
import * as z from 'zod';
import { ItemKindCode } from '../item/item.ts';
import { SOURCE_EXAMPLE, Source, StandingCode } from '../item/obligation.ts';
import { CalendarDay, Id } from '../shared.ts';

const Vessel = z.object({ id: Id, name: z.string() });
const Thing = z.object({ itemId: Id, label: z.string() }).meta({ id: 'SampledThing' });

export const FleetSample = z
  .object({
    vessel: Vessel,
    kind: ItemKindCode,
    madeIn: z.string().meta({ description: 'The year of manufacture that they share.', example: '2019' }),
    howMany: z.int(),
    by: CalendarDay.meta({ description: 'The last day on which nothing is wrong yet.' }),
    standing: StandingCode,
    among: z.array(Thing).meta({ description: 'Those of which it may be any; the longest without first.' }),
    ruleId: z.string(),
    reference: Source,
  })
  .meta({ id: 'FleetSample' });
export type FleetSample = z.infer<typeof FleetSample>;

export const FleetSampleList = z
  .object({
    asOf: CalendarDay,
    items: z.array(FleetSample),
    unknown: z
      .array(z.object({ vessel: Vessel, thing: Thing }))
      .meta({ description: 'Things whose year of manufacture is not on record: nothing can be said of them.' }),
    nextCursor: z.null(),
  })
  .meta({
    id: 'FleetSampleList',
    example: {
      asOf: '2026-11-25',
      items: [
        {
          vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
          kind: 'portable_extinguisher_dry_powder',
          madeIn: '2019',
          howMany: 1,
          by: '2027-03-01',
          standing: 'in_date',
          among: [{ itemId: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b', label: 'Extinguisher, galley' }],
          ruleId: 'fe-imo',
          reference: { ...SOURCE_EXAMPLE, publication: 'Res. A.951(23)', clause: '9.1-9.2' },
        },
      ],
      unknown: [],
      nextCursor: null,
    },
  });
export type FleetSampleList = z.infer<typeof FleetSampleList>;
