/** Many facts in one request, and what became of each. */
import * as z from 'zod';
import { Problem } from '../problem.ts';
import { CalendarDay, Id } from '../shared.ts';
import { FACT_EXAMPLE, Fact, NewFact } from './fact.ts';
import { StandingCode } from './obligation.ts';

const ITEM_ID = '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b';
const SERVICED = { fact: 'serviced', on: '2026-03-18', doneBy: { capacity: 'fire_equipment_technician' } };

export const NewFacts = z
  .strictObject({
    items: z
      .array(z.strictObject({ itemId: Id, fact: NewFact }))
      .min(1)
      .max(200),
  })
  .meta({
    id: 'NewFacts',
    example: { items: [{ itemId: ITEM_ID, fact: { ...SERVICED, outcome: 'passed', evidence: 'certificate' } }] },
  });
export type NewFacts = z.infer<typeof NewFacts>;

const DateAfter = z
  .object({
    ruleId: z.string(),
    duty: z.string(),
    words: z.string().meta({ description: 'What is to be done.' }),
    dueOn: CalendarDay.optional(),
    standing: StandingCode,
  })
  .meta({ id: 'DateAfter', description: 'One of the item’s obligations as it stands after the fact.' });

export const FactOutcome = z
  .discriminatedUnion('result', [
    z.object({
      result: z.literal('recorded'),
      itemId: Id,
      fact: Fact,
      dates: z.array(DateAfter),
      doubts: z.array(z.string()).meta({ description: 'What looks odd about the fact although it was accepted.' }),
    }),
    z.object({
      result: z.literal('refused'),
      itemId: Id,
      problem: Problem.meta({ description: 'Why; its pointers are into this row’s `fact`.' }),
    }),
  ])
  .meta({
    id: 'FactOutcome',
    example: { result: 'recorded', itemId: ITEM_ID, fact: FACT_EXAMPLE, dates: [], doubts: [] },
  });
export type FactOutcome = z.infer<typeof FactOutcome>;

export const FactOutcomes = z
  .object({ items: z.array(FactOutcome).meta({ description: 'In the order asked.' }) })
  .meta({ id: 'FactOutcomes' });
export type FactOutcomes = z.infer<typeof FactOutcomes>;
