/** The registry of organisations. */
import type { Db } from '../pool.ts';
import type { Scoped } from '../scope.ts';

export type OrganisationRecord = { readonly id: string; readonly name: string; readonly timeZone: string };

const COLUMNS = ['id', 'name', 'time_zone as timeZone'] as const;

/** Every organisation, by name. Administration only: needs the owner's pool. */
export function listOrganisations(owner: Db): Promise<OrganisationRecord[]> {
  return owner.selectFrom('organisation').select(COLUMNS).orderBy('name').execute();
}

/** By name, whatever its case. Administration only: needs the owner's pool. */
export async function findOrganisationByName(owner: Db, name: string): Promise<OrganisationRecord | null> {
  const found = await owner
    .selectFrom('organisation')
    .select(COLUMNS)
    .where((eb) => eb(eb.fn<string>('lower', ['name']), '=', name.toLowerCase()))
    .executeTakeFirst();
  return found ?? null;
}

/** The organisation of the scope. */
export function loadOrganisation(tx: Scoped): Promise<OrganisationRecord> {
  return tx.selectFrom('organisation').select(COLUMNS).executeTakeFirstOrThrow();
}

export async function insertOrganisation(owner: Db, row: OrganisationRecord & { createdAt: Date }): Promise<void> {
  await owner
    .insertInto('organisation')
    .values({ id: row.id, name: row.name, time_zone: row.timeZone, created_at: row.createdAt })
    .execute();
}

/** Administration only: needs the owner's pool. */
export async function updateOrganisationName(owner: Db, id: string, name: string): Promise<void> {
  await owner.updateTable('organisation').set({ name }).where('id', '=', id).execute();
}
