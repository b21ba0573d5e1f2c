/** What a vessel was doing, by day. */
import { parseDay } from '@garboard/domain/calendar/day.ts';
import type { Place, Situation, Use } from '@garboard/domain/vessel/situation.ts';
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { SituationTable } from './tables.ts';

export type SituationRecord = {
  readonly id: string;
  readonly from: string;
  readonly place: Place;
  readonly use: Use;
  readonly dismantled: boolean;
  readonly underRepair: boolean;
  readonly recordedAt: string;
};
export type DatedKey = { readonly on: string; readonly id: string };

/** The latest first. */
export async function listSituations(
  tx: Scoped,
  vesselId: string,
  limit: number,
  before?: DatedKey,
): Promise<Page<SituationRecord>> {
  let query = tx
    .selectFrom('situation')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('starts_on', 'desc')
    .orderBy('id', 'desc')
    .limit(sql.lit(limit + 1));
  if (before) query = query.where(sql<boolean>`(starts_on, id) < (${before.on}::date, ${before.id}::uuid)`);
  return pageOf((await query.execute()).map(toSituationRecord), limit);
}

export async function insertSituation(
  tx: Scoped,
  organisationId: string,
  vesselId: string,
  record: SituationRecord,
): Promise<void> {
  await tx
    .insertInto('situation')
    .values({
      organisation_id: organisationId,
      id: record.id,
      vessel_id: vesselId,
      starts_on: record.from,
      place: record.place,
      use: record.use,
      dismantled: record.dismantled,
      under_repair: record.underRepair,
      recorded_at: record.recordedAt,
    })
    .execute();
}

export function toSituationRecord(row: Selectable<SituationTable>): SituationRecord {
  return {
    id: row.id,
    from: row.starts_on,
    place: row.place as Place,
    use: row.use as Use,
    dismantled: row.dismantled,
    underRepair: row.under_repair,
    recordedAt: row.recorded_at.toISOString(),
  };
}

export function toSituation(row: Selectable<SituationTable>): Situation {
  const from = parseDay(row.starts_on);
  if (from === null) throw new Error(`situation ${row.id}: no day ${row.starts_on}`);
  return { ...toSituationRecord(row), from };
}
