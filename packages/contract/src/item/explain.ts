/** The rules engine on facts that are not stored. No side effects. */
import * as z from 'zod';
import { Fault } from '../problem.ts';
import { NewOverride } from '../rule/override.ts';
import { NewOwnRule } from '../rule/own-rule.ts';
import { AskedDay, CalendarDay, Instant, TimeZone } from '../shared.ts';
import { NewSituation, NewVesselEvent } from '../vessel/situation.ts';
import { SchemeCode } from '../vessel/vessel.ts';
import { UnstoredFact } from './fact.ts';
import { Attributes, ItemKindCode } from './item.ts';
import { Obligation } from './obligation.ts';

const recordedAt = Instant.optional().meta({
  description: 'When it was learned, for `knownAt`. Absent: always known.',
});

/** The same as is set for a vessel, for the one thing asked about. */
const UnstoredOverride = NewOverride.omit({ itemId: true })
  .extend({
    id: z
      .string()
      .min(1)
      .max(60)
      .optional()
      .meta({ description: 'What `overrideId` calls it; its place in the list where absent.' }),
    recordedAt,
    ended: z
      .strictObject({ on: CalendarDay, recordedAt })
      .optional()
      .meta({ description: 'The first day on which it counts no more.' }),
  })
  .meta({ id: 'UnstoredOverride' });
export type UnstoredOverride = z.infer<typeof UnstoredOverride>;

/** The same as is laid down for a fleet, for the one thing asked about; each a version of its own. */
const UnstoredOwnRule = NewOwnRule.omit({ vessels: true })
  .extend({
    id: z
      .string()
      .regex(/^[A-Za-z0-9._-]{1,60}$/, 'must be 1 to 60 letters, digits, dots, dashes or underscores')
      .optional()
      .meta({ description: 'What `ruleId` calls it; `own-0`, `own-1`, … by its place in the list where absent.' }),
    recordedAt,
  })
  .meta({ id: 'UnstoredOwnRule' });
export type UnstoredOwnRule = z.infer<typeof UnstoredOwnRule>;

export const ExplainRequest = z
  .strictObject({
    vessel: z
      .strictObject({ timeZone: TimeZone.optional() })
      .optional()
      .meta({ description: 'Her time zone decides what day today is; default: the organisation’s.' }),
    kind: ItemKindCode,
    attributes: Attributes.default({}),
    schemes: z
      .array(SchemeCode)
      .max(20)
      .default([])
      .meta({ description: 'Schemes that always apply need not be named.' }),
    facts: z.array(UnstoredFact).max(500),
    situations: z.array(NewSituation.extend({ recordedAt })).max(200).default([]),
    events: z.array(NewVesselEvent.extend({ recordedAt })).max(200).default([]),
    overrides: z
      .array(UnstoredOverride)
      .max(50)
      .default([])
      .meta({ description: 'Own figures in place of published intervals, by the same rules as those that are kept.' }),
    ownRules: z.array(UnstoredOwnRule).max(50).default([]).meta({
      description: 'Own rules beside the published ones; those that are kept do not count here by themselves.',
    }),
    asOf: AskedDay.optional().meta({
      description:
        'Facts after this day do not count. Default: today in the vessel’s place. A fact may lie in the future of today only up to this day.',
    }),
    knownAt: Instant.optional(),
  })
  .meta({
    id: 'ExplainRequest',
    example: {
      kind: 'liferaft',
      schemes: ['solas'],
      facts: [
        { fact: 'manufactured', on: '2019-04' },
        {
          fact: 'serviced',
          on: '2025-11-04',
          doneBy: { capacity: 'liferaft_service_station' },
          evidence: 'certificate',
        },
      ],
      asOf: '2026-11-25',
    },
  });
export type ExplainRequest = z.infer<typeof ExplainRequest>;

export const Explained = z
  .object({
    asOf: CalendarDay,
    items: z.array(Obligation),
    doubts: z.array(Fault).meta({ description: 'What looks odd about a stated fact although it was accepted.' }),
    nextCursor: z.null(),
  })
  .meta({
    id: 'Explained',
    description: 'Every obligation that the schemes put on such a thing, by `overdueAfter`; without a date last.',
  });
export type Explained = z.infer<typeof Explained>;
