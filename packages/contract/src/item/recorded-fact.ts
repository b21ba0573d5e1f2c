/** A fact just recorded, with what it changed. */
import * as z from 'zod';
import { CalendarDay } from '../shared.ts';
import { FACT_EXAMPLE, Fact } from './fact.ts';
import { OBLIGATION_EXAMPLE, Obligation } from './obligation.ts';

export const RecordedFact = z
  .object({
    fact: Fact,
    asOf: CalendarDay.meta({ description: 'The day it was recorded, in the vessel’s own place.' }),
    obligations: z.array(Obligation).meta({ description: 'Every obligation of the item after this fact.' }),
    doubts: z.array(z.string()).meta({ description: 'What looks odd about the fact although it was accepted.' }),
  })
  .meta({
    id: 'RecordedFact',
    example: { fact: FACT_EXAMPLE, asOf: '2026-11-25', obligations: [OBLIGATION_EXAMPLE], doubts: [] },
  });
export type RecordedFact = z.infer<typeof RecordedFact>;
