/** What happened to a vessel, or is planned for her. */
import { parseDay } from '@garboard/domain/calendar/day.ts';
import type { VesselEvent, VesselEventKind } from '@garboard/domain/vessel/situation.ts';
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { DatedKey } from './situations.ts';
import type { VesselEventTable } from './tables.ts';

export type VesselEventRecord = {
  readonly id: string;
  readonly event: VesselEventKind;
  readonly on: string;
  readonly planned: boolean;
  readonly note: string | null;
  readonly recordedAt: string;
};

/** The latest first. */
export async function listEvents(
  tx: Scoped,
  vesselId: string,
  limit: number,
  before?: DatedKey,
): Promise<Page<VesselEventRecord>> {
  let query = tx
    .selectFrom('vessel_event')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('on_day', 'desc')
    .orderBy('id', 'desc')
    .limit(sql.lit(limit + 1));
  if (before) query = query.where(sql<boolean>`(on_day, id) < (${before.on}::date, ${before.id}::uuid)`);
  return pageOf((await query.execute()).map(toVesselEventRecord), limit);
}

export async function insertEvent(
  tx: Scoped,
  organisationId: string,
  vesselId: string,
  record: VesselEventRecord,
): Promise<void> {
  await tx
    .insertInto('vessel_event')
    .values({
      organisation_id: organisationId,
      id: record.id,
      vessel_id: vesselId,
      event: record.event,
      on_day: record.on,
      planned: record.planned,
      note: record.note,
      recorded_at: record.recordedAt,
    })
    .execute();
}

function toVesselEventRecord(row: Selectable<VesselEventTable>): VesselEventRecord {
  return {
    id: row.id,
    event: row.event as VesselEventKind,
    on: row.on_day,
    planned: row.planned,
    note: row.note,
    recordedAt: row.recorded_at.toISOString(),
  };
}

export function toVesselEvent(row: Selectable<VesselEventTable>): VesselEvent {
  const on = parseDay(row.on_day);
  if (on === null) throw new Error(`event ${row.id}: no day ${row.on_day}`);
  const { id, event, planned, recordedAt } = toVesselEventRecord(row);
  return { id, event, on, planned, recordedAt };
}
