/** The rules engine on stored items: parsed, worked out with every explanation, and written out as text again. */
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate, type RecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { type VesselHistory, workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import type { StoredFact, StoredItem } from './stored-items.ts';

const VESSEL: VesselHistory = { schemes: ['solas', 'insurer'], situations: [], events: [] };

export function engineDueDates({ kind, facts }: StoredItem): readonly string[] {
  return workOutObligations({ kind, attributes: {}, facts: facts.map(toFact) }, VESSEL).map(({ outcome }) =>
    outcome.kind === 'dated' ? formatDay(outcome.dueOn) : 'unknown',
  );
}

function toFact({ fact, on, by }: StoredFact, at: number): Fact {
  return {
    id: `${at}`,
    fact,
    on: parseRecordedDate(on) as RecordedDate,
    outcome: 'passed',
    evidence: 'record',
    recordedAt: '2026-01-01T00:00:00Z',
    ...(by !== undefined && { doneBy: { capacity: by } }),
  };
}
