/** An override's row, as a record for the API and as a value for the rules. */
import { type Day, parseDay } from '@garboard/domain/calendar/day.ts';
import type { Override, OverrideWeight } from '@garboard/domain/rule/override.ts';
import type { PeriodText } from '@garboard/domain/rule/rule.ts';
import type { Insertable, Selectable } from 'kysely';
import type { OverrideTable } from './tables.ts';

export type OverrideEnding = {
  readonly on: string;
  readonly reason: string;
  readonly recordedAt: string;
  readonly recordedBy: string;
};

export type OverrideRecord = Omit<Override, 'from' | 'ended'> & {
  readonly vesselId: string;
  readonly from: string;
  readonly recordedBy: string;
  readonly ended: OverrideEnding | null;
  /** 1 in force, 2 ended: nothing else of it ever changes. */
  readonly version: number;
};

export function toOverrideRecord(row: Selectable<OverrideTable>): OverrideRecord {
  const ended = toEnding(row);
  return {
    id: row.id,
    vesselId: row.vessel_id,
    itemId: row.item_id,
    ruleId: row.rule_id,
    duty: row.duty,
    period: row.period as PeriodText,
    weight: row.weight as OverrideWeight,
    decidedBy: row.decided_by,
    reason: row.reason,
    document: row.document,
    from: row.starts_on,
    recordedAt: row.recorded_at.toISOString(),
    recordedBy: row.set_by,
    ended,
    version: ended ? 2 : 1,
  };
}

function toEnding(row: Selectable<OverrideTable>): OverrideEnding | null {
  if (row.ended_on === null || row.ended_at === null || row.ended_by === null || row.ended_reason === null) return null;
  return {
    on: row.ended_on,
    reason: row.ended_reason,
    recordedAt: row.ended_at.toISOString(),
    recordedBy: row.ended_by,
  };
}

export function toOverrideColumns(
  organisationId: string,
  record: Omit<OverrideRecord, 'ended' | 'version'>,
): Insertable<OverrideTable> {
  return {
    organisation_id: organisationId,
    id: record.id,
    vessel_id: record.vesselId,
    item_id: record.itemId,
    rule_id: record.ruleId,
    duty: record.duty,
    period: record.period,
    weight: record.weight,
    decided_by: record.decidedBy,
    reason: record.reason,
    document: record.document,
    starts_on: record.from,
    set_by: record.recordedBy,
    recorded_at: record.recordedAt,
  };
}

/** The same as the rules read it. */
export function toOverride(record: OverrideRecord): Override {
  const { id, itemId, ruleId, duty, period, weight, decidedBy, reason, document, recordedAt, ended } = record;
  return {
    ...{ id, itemId, ruleId, duty, period, weight, decidedBy, reason, document, recordedAt },
    from: dayOf(record, record.from),
    ended: ended && { on: dayOf(record, ended.on), recordedAt: ended.recordedAt },
  };
}

function dayOf({ id }: OverrideRecord, text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new Error(`override ${id}: no day ${text}`);
  return day;
}
