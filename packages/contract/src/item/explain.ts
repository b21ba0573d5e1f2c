/** The rules engine on facts that are not stored. No side effects. */
import * as z from 'zod';
import { CalendarDay, Instant } from '../shared.ts';
import { NewSituation, NewVesselEvent } from '../vessel/situation.ts';
import { SchemeCode } from '../vessel/vessel.ts';
import { UnstoredFact } from './fact.ts';
import { Attributes, ItemKindCode } from './item.ts';

export const ExplainRequest = z
  .strictObject({
    vessel: z
      .strictObject({ builtYear: z.int().optional(), lengthOverallM: z.number().positive().optional(), timeZone: z.string().optional() })
      .optional(),
    kind: ItemKindCode,
    attributes: Attributes.default({}),
    schemes: z.array(SchemeCode).max(20).default([]),
    facts: z.array(UnstoredFact).max(500),
    situations: z.array(NewSituation).max(200).default([]),
    events: z.array(NewVesselEvent).max(200).default([]),
    asOf: CalendarDay.optional(),
    knownAt: Instant.optional(),
  })
  .meta({ id: 'ExplainRequest' });
export type ExplainRequest = z.infer<typeof ExplainRequest>;
