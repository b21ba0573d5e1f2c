/** The registry of organisations. */
import type { Db } from '../pool.ts';
import type { Scoped } from '../scope.ts';

export type OrganisationRecord = { readonly id: string; readonly name: string; readonly timeZone: string };
export type VersionedOrganisation = OrganisationRecord & { readonly version: number };

const COLUMNS = ['id', 'name', 'time_zone as timeZone'] as const;

/** Every organisation, by name. Administration only: needs the owner's pool. */
export function listOrganisations(owner: Db): Promise<OrganisationRecord[]> {
  return owner.selectFrom('organisation').select(COLUMNS).orderBy('name').execute();
}

/** By name, whatever its case: there may be several. Administration only: needs the owner's pool. */
export function findOrganisationsByName(owner: Db, name: string): Promise<OrganisationRecord[]> {
  return owner
    .selectFrom('organisation')
    .select(COLUMNS)
    .where((eb) => eb(eb.fn<string>('lower', ['name']), '=', name.toLowerCase()))
    .execute();
}

/** The organisation of the scope. */
export function loadOrganisation(tx: Scoped): Promise<VersionedOrganisation> {
  return tx
    .selectFrom('organisation')
    .select([...COLUMNS, 'version'])
    .executeTakeFirstOrThrow();
}

/**
 * The row that lets only one change of who owns the organisation through at a time. Without its key: a foreign key
 * to it, such as that of a repeat's key, must not wait for this, nor this for that.
 */
export async function lockOrganisation(tx: Scoped): Promise<VersionedOrganisation> {
  return tx
    .selectFrom('organisation')
    .select([...COLUMNS, 'version'])
    .forNoKeyUpdate()
    .executeTakeFirstOrThrow();
}

/** Does nothing where there is one with that id already. */
export async function insertOrganisation(
  db: Db | Scoped,
  row: OrganisationRecord & { createdAt: Date },
): Promise<void> {
  await db
    .insertInto('organisation')
    .values({ id: row.id, name: row.name, time_zone: row.timeZone, created_at: row.createdAt })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
}

/** The organisation of the scope, locked before. */
export async function updateOrganisation(tx: Scoped, after: VersionedOrganisation): Promise<void> {
  await tx
    .updateTable('organisation')
    .set({ name: after.name, time_zone: after.timeZone, version: after.version })
    .where('id', '=', after.id)
    .execute();
}

/** Administration only: needs the owner's pool. */
export async function updateOrganisationName(owner: Db, id: string, name: string): Promise<void> {
  await owner.updateTable('organisation').set({ name }).where('id', '=', id).execute();
}
