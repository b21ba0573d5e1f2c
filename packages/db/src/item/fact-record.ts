/** A fact's row, as a record for the API and as a value for the rules. */
import { type Day, parseDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import type { DoneBy, Evidence, Fact, FactKind, Outcome, TestKind } from '@garboard/domain/item/fact.ts';
import type { Insertable, Selectable } from 'kysely';
import type { FactTable } from './tables.ts';

export type FactRecord = {
  readonly id: string;
  readonly itemId: string;
  readonly fact: FactKind;
  readonly on: string;
  readonly outcome: Outcome;
  readonly test: TestKind | null;
  readonly doneBy: DoneBy | null;
  readonly evidence: Evidence;
  readonly until: string | null;
  readonly reading: NonNullable<Fact['reading']> | null;
  readonly readOn: string | null;
  readonly note: string | null;
  readonly corrects: string | null;
  readonly retracts?: true;
  readonly recordedAt: string;
  readonly recordedBy: string;
};

export function toFactRecord(row: Selectable<FactTable>): FactRecord {
  return {
    id: row.id,
    itemId: row.item_id,
    fact: row.fact as FactKind,
    on: row.on_text,
    outcome: row.outcome as Outcome,
    test: row.test as TestKind | null,
    doneBy: row.done_by as DoneBy | null,
    evidence: row.evidence as Evidence,
    until: row.until_day,
    reading: row.reading as FactRecord['reading'],
    readOn: row.read_on,
    note: row.note,
    corrects: row.corrects,
    ...(row.retracts && { retracts: true as const }),
    recordedAt: row.recorded_at.toISOString(),
    recordedBy: row.recorded_by,
  };
}

export function toFactColumns(organisationId: string, fact: FactRecord): Insertable<FactTable> {
  return {
    organisation_id: organisationId,
    id: fact.id,
    item_id: fact.itemId,
    fact: fact.fact,
    on_text: fact.on,
    outcome: fact.outcome,
    test: fact.test,
    done_by: fact.doneBy && JSON.stringify(fact.doneBy),
    evidence: fact.evidence,
    until_day: fact.until,
    reading: fact.reading && JSON.stringify(fact.reading),
    read_on: fact.readOn,
    note: fact.note,
    corrects: fact.corrects,
    retracts: fact.retracts ?? false,
    recorded_at: fact.recordedAt,
    recorded_by: fact.recordedBy,
  };
}

/** The same statement as the rules read it. Throws on a date that the table should never have taken. */
export function toFact(record: FactRecord): Fact {
  const on = parseRecordedDate(record.on);
  if (!on) throw new Error(`fact ${record.id}: no date ${record.on}`);
  return {
    id: record.id,
    fact: record.fact,
    on,
    outcome: record.outcome,
    evidence: record.evidence,
    recordedAt: record.recordedAt,
    ...(record.test && { test: record.test }),
    ...(record.doneBy && { doneBy: record.doneBy }),
    ...(record.until && { until: day(record, record.until) }),
    ...(record.reading && { reading: record.reading }),
    ...(record.readOn && { readOn: day(record, record.readOn) }),
    ...(record.note && { note: record.note }),
    ...(record.corrects && { corrects: record.corrects }),
    ...(record.retracts && { retracts: true as const }),
  };
}

function day(record: FactRecord, text: string): Day {
  const parsed = parseDay(text);
  if (parsed === null) throw new Error(`fact ${record.id}: no day ${text}`);
  return parsed;
}
