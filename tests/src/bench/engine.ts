/** The explaining engine on stored items: parsed, worked out with every explanation, and written out as text again. */
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate, type RecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import type { Contender } from './contender.ts';
import { type StoredFactRow, type StoredItem, VESSEL } from './stored-items.ts';

export const EXPLAINING: Contender = {
  name: 'the explaining engine',
  work: (items, take) => {
    for (const item of items) dueDates(item, take);
  },
};

function dueDates({ kind, facts }: StoredItem, take: (date: string) => void): void {
  const obligations = workOutObligations({ kind, attributes: {}, facts: facts.map(toFact) }, VESSEL);
  for (const { outcome } of obligations) take(outcome.kind === 'dated' ? formatDay(outcome.dueOn) : 'unknown');
}

function toFact({ id, fact, on_text, outcome, done_by, recorded_at }: StoredFactRow): Fact {
  return {
    ...{ id, fact, outcome, evidence: 'record' },
    on: parseRecordedDate(on_text) as RecordedDate,
    recordedAt: recorded_at.toISOString(),
    ...(done_by !== null && { doneBy: done_by }),
  };
}
