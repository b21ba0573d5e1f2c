/** The things aboard: one statement a question. */
import { sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { type ItemParticulars, type ItemRecord, toItemColumns, toItemRecord } from './item-record.ts';

export async function loadItem(tx: Scoped, id: string): Promise<ItemRecord | null> {
  const row = await tx.selectFrom('item').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toItemRecord(row) : null;
}

/** In the order in which they were added. */
export async function listItems(
  tx: Scoped,
  vesselId: string,
  limit: number,
  after?: string,
): Promise<Page<ItemRecord>> {
  let query = tx
    .selectFrom('item')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('id')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('id', '>', after);
  return pageOf((await query.execute()).map(toItemRecord), limit);
}

export async function insertItems(tx: Scoped, organisationId: string, items: readonly ItemRecord[]): Promise<void> {
  await tx
    .insertInto('item')
    .values(
      items.map((item) => ({
        ...toItemColumns(item),
        organisation_id: organisationId,
        id: item.id,
        vessel_id: item.vesselId,
        kind: item.kind,
        withdrawn: item.withdrawn,
        created_at: item.createdAt,
        version: item.version,
      })),
    )
    .execute();
}

/** Writes only over the version that was read; `null` when somebody was faster. */
export async function updateItem(
  tx: Scoped,
  id: string,
  version: number,
  changed: ItemParticulars,
): Promise<ItemRecord | null> {
  const row = await tx
    .updateTable('item')
    .set({ ...toItemColumns(changed), version: version + 1 })
    .where('id', '=', id)
    .where('version', '=', version)
    .returningAll()
    .executeTakeFirst();
  return row ? toItemRecord(row) : null;
}

/** A new fact is a new version of the item; answers with it. */
export async function touchItem(tx: Scoped, id: string): Promise<number> {
  const { version } = await tx
    .updateTable('item')
    .set((eb) => ({ version: eb('version', '+', 1) }))
    .where('id', '=', id)
    .returning('version')
    .executeTakeFirstOrThrow();
  return version;
}

export async function setWithdrawn(tx: Scoped, ids: readonly string[], withdrawn: boolean): Promise<void> {
  if (ids.length === 0) return;
  await tx
    .updateTable('item')
    .set({ withdrawn })
    .where('id', 'in', [...ids])
    .execute();
}
