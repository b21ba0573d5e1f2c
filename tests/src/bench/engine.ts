/** The rules engine on stored items: parsed, worked out with every explanation, and written out as text again. */
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate, type RecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { type VesselHistory, workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import type { StoredFact, StoredItem } from './stored-items.ts';

const VESSEL: VesselHistory = { schemes: ['solas', 'insurer'], situations: [], events: [] };

export function engineDueDates(item: StoredItem): readonly string[] {
  return obligationsOf(item).map(({ outcome }) => (outcome.kind === 'dated' ? formatDay(outcome.dueOn) : 'unknown'));
}

export function obligationsOf({ kind, facts }: StoredItem): readonly Obligation[] {
  return workOutObligations({ kind, attributes: {}, facts: facts.map(toFact) }, VESSEL);
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
