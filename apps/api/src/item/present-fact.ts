/** A fact's record as the API shows it, and a stated fact as the record keeps it. */
import type { FactInput } from '@garboard/actions/item/record-fact.ts';
import type { Fact, NewFact } from '@garboard/contract/item/fact.ts';
import type { ListedFact } from '@garboard/db/item/facts.ts';
import type { DoneBy } from '@garboard/domain/item/fact.ts';
import { given } from '../request/given.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentFact(fact: ListedFact): Fact {
  const { reading, doneBy, corrects, struckOutBy } = fact;
  return {
    ...withoutNulls({
      id: fact.id,
      itemId: fact.itemId,
      fact: fact.fact,
      on: fact.on,
      outcome: fact.outcome,
      test: fact.test,
      doneBy: doneBy && presentDoneBy(doneBy),
      evidence: fact.evidence,
      until: fact.until,
      reading: reading && { value: reading.value, unit: reading.unit },
      readOn: fact.readOn,
      note: fact.note,
      retracts: fact.retracts ?? null,
      recordedAt: fact.recordedAt,
      recordedBy: fact.recordedBy,
    }),
    corrects,
    struckOutBy,
  };
}

function presentDoneBy({ name, capacity, certificate }: DoneBy): DoneBy {
  return { ...(name && { name }), ...(capacity && { capacity }), ...(certificate && { certificate }) };
}

export function toFactInput(stated: NewFact): FactInput {
  const { doneBy, ...fact } = given(stated);
  return { ...NOTHING_SAID, ...fact, doneBy: doneBy ? given(doneBy) : null };
}

const NOTHING_SAID = { test: null, until: null, reading: null, readOn: null, note: null, corrects: null };
