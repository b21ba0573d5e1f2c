/** Views kept under a name: one statement a question. Somebody sees their own and everybody's. */
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { SavedViewTable } from './tables.ts';

export type SavedViewRecord = {
  readonly id: string;
  readonly name: string;
  readonly page: 'fleet' | 'due';
  readonly filters: Readonly<Record<string, string>>;
  /** `null` where it is everybody's. */
  readonly ownerId: string | null;
  readonly savedBy: string;
  readonly createdAt: string;
  readonly removedAt: string | null;
  readonly version: number;
};
export type SavedViewKey = { readonly name: string; readonly id: string };

const seenBy = (viewerId: string) => sql<boolean>`(owner_id is null or owner_id = ${viewerId}::uuid)`;

/** `null` too where it is somebody else's own. A removed one is found: whoever asks says what that means. */
export async function loadSavedView(tx: Scoped, id: string, viewerId: string): Promise<SavedViewRecord | null> {
  const row = await tx
    .selectFrom('saved_view')
    .selectAll()
    .where('id', '=', id)
    .where(seenBy(viewerId))
    .executeTakeFirst();
  return row ? toRecord(row) : null;
}

/** By name; without the removed ones. */
export async function listSavedViews(
  tx: Scoped,
  viewerId: string,
  limit: number,
  after?: SavedViewKey,
): Promise<Page<SavedViewRecord>> {
  let query = tx
    .selectFrom('saved_view')
    .selectAll()
    .where('removed_at', 'is', null)
    .where(seenBy(viewerId))
    .orderBy('name')
    .orderBy('id')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where(sql<boolean>`(name, id) > (${after.name}, ${after.id}::uuid)`);
  return pageOf((await query.execute()).map(toRecord), limit);
}

export async function insertSavedView(tx: Scoped, organisationId: string, record: SavedViewRecord): Promise<void> {
  await tx
    .insertInto('saved_view')
    .values({
      ...{ organisation_id: organisationId, id: record.id, page: record.page, saved_by: record.savedBy },
      ...{ created_at: record.createdAt, version: record.version, ...changeable(record) },
    })
    .execute();
}

/** Writes only over the version before; `false` when somebody was faster. */
export async function updateSavedView(tx: Scoped, after: SavedViewRecord): Promise<boolean> {
  const { numUpdatedRows } = await tx
    .updateTable('saved_view')
    .set({ ...changeable(after), version: after.version })
    .where('id', '=', after.id)
    .where('version', '=', after.version - 1)
    .executeTakeFirstOrThrow();
  return numUpdatedRows === 1n;
}

const changeable = ({ name, filters, ownerId, removedAt }: SavedViewRecord) => ({
  ...{ name, filters: JSON.stringify(filters), owner_id: ownerId, removed_at: removedAt },
});

function toRecord(row: Selectable<SavedViewTable>): SavedViewRecord {
  return {
    id: row.id,
    name: row.name,
    page: row.page as SavedViewRecord['page'],
    filters: row.filters,
    ownerId: row.owner_id,
    savedBy: row.saved_by,
    createdAt: row.created_at.toISOString(),
    removedAt: row.removed_at?.toISOString() ?? null,
    version: row.version,
  };
}
