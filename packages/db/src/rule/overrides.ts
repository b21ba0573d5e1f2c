/** An organisation's own figures: one statement a question. They are only added, and ended. */
import type { Override } from '@garboard/domain/rule/override.ts';
import { sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { DatedKey } from '../vessel/situations.ts';
import {
  type OverrideEnding,
  type OverrideRecord,
  toOverride,
  toOverrideColumns,
  toOverrideRecord,
} from './override-record.ts';

export async function loadOverride(tx: Scoped, id: string): Promise<OverrideRecord | null> {
  const row = await tx.selectFrom('override').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toOverrideRecord(row) : null;
}

/** The latest to take effect first; ended ones stay. */
export async function listOverrides(
  tx: Scoped,
  vesselId: string,
  limit: number,
  before?: DatedKey,
): Promise<Page<OverrideRecord>> {
  let query = tx
    .selectFrom('override')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('starts_on', 'desc')
    .orderBy('id', 'desc')
    .limit(sql.lit(limit + 1));
  if (before) query = query.where(sql<boolean>`(starts_on, id) < (${before.on}::date, ${before.id}::uuid)`);
  return pageOf((await query.execute()).map(toOverrideRecord), limit);
}

/** All of a vessel's, ended ones too, as the rules read them. */
export async function loadOverrides(tx: Scoped, vesselId: string): Promise<Override[]> {
  const rows = await tx.selectFrom('override').selectAll().where('vessel_id', '=', vesselId).orderBy('id').execute();
  return rows.map(toOverrideRecord).map(toOverride);
}

/** The things of these kinds on the vessel: what a figure for the whole of her can bear on. */
export async function listItemIdsOfKinds(tx: Scoped, vesselId: string, kinds: readonly string[]): Promise<string[]> {
  const rows = await tx
    .selectFrom('item')
    .select('id')
    .where('vessel_id', '=', vesselId)
    .where('kind', 'in', [...kinds])
    .orderBy('id')
    .execute();
  return rows.map(({ id }) => id);
}

export async function insertOverride(
  tx: Scoped,
  organisationId: string,
  record: Omit<OverrideRecord, 'ended' | 'version'>,
): Promise<void> {
  await tx.insertInto('override').values(toOverrideColumns(organisationId, record)).execute();
}

export async function markEnded(tx: Scoped, id: string, ending: OverrideEnding): Promise<void> {
  await tx
    .updateTable('override')
    .set({
      ended_on: ending.on,
      ended_at: ending.recordedAt,
      ended_by: ending.recordedBy,
      ended_reason: ending.reason,
    })
    .where('id', '=', id)
    .execute();
}
