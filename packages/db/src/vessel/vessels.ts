/** The register of vessels: one statement a question. The scope keeps other organisations out. */
import { sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { type Particulars, toColumns, toVesselRecord, type VesselRecord } from './vessel-record.ts';

export async function loadVessel(tx: Scoped, id: string): Promise<VesselRecord | null> {
  const row = await tx.selectFrom('vessel').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toVesselRecord(row) : null;
}

/**
 * Loads the vessel and holds her row until the transaction ends. Whatever changes her obligations comes
 * through here first, so that two writers never work out dates from half of each other's facts.
 */
export async function lockVessel(tx: Scoped, id: string): Promise<VesselRecord | null> {
  const row = await tx.selectFrom('vessel').selectAll().where('id', '=', id).forUpdate().executeTakeFirst();
  return row ? toVesselRecord(row) : null;
}

/**
 * Holds every vessel of the organisation until the transaction ends, and lets none be entered meanwhile: for
 * what is matched against the whole fleet. Whoever enters a vessel comes through `enterRegister` first.
 */
export async function lockFleet(tx: Scoped, organisationId: string): Promise<void> {
  await sql`select pg_advisory_xact_lock(hashtextextended(${registerOf(organisationId)}, 0))`.execute(tx);
  await sql`select from vessel order by id for update`.execute(tx);
}

/** Until the transaction ends nobody holds the fleet as a whole. */
export async function enterRegister(tx: Scoped, organisationId: string): Promise<void> {
  await sql`select pg_advisory_xact_lock_shared(hashtextextended(${registerOf(organisationId)}, 0))`.execute(tx);
}

const registerOf = (organisationId: string) => `register of ${organisationId}`;

export type VesselKey = { readonly name: string; readonly id: string };

/** By name. */
export async function listVessels(tx: Scoped, limit: number, after?: VesselKey): Promise<Page<VesselRecord>> {
  let query = tx
    .selectFrom('vessel')
    .selectAll()
    .orderBy('name')
    .orderBy('id')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where(sql<boolean>`(name, id) > (${after.name}, ${after.id}::uuid)`);
  return pageOf((await query.execute()).map(toVesselRecord), limit);
}

export async function insertVessel(tx: Scoped, organisationId: string, vessel: VesselRecord): Promise<void> {
  const { id, createdAt, version } = vessel;
  await tx
    .insertInto('vessel')
    .values({ ...toColumns(vessel), organisation_id: organisationId, id, created_at: createdAt, version })
    .execute();
  await tx
    .insertInto('vessel_standing')
    .values({
      organisation_id: organisationId,
      vessel_id: id,
      items: 0,
      dated: 0,
      undated: 0,
      earliest_overdue_after: null,
    })
    .execute();
}

/** Writes only over the version that was read; `null` when somebody was faster. */
export async function updateVessel(
  tx: Scoped,
  id: string,
  version: number,
  changed: Particulars,
): Promise<VesselRecord | null> {
  const row = await tx
    .updateTable('vessel')
    .set({ ...toColumns(changed), version: version + 1 })
    .where('id', '=', id)
    .where('version', '=', version)
    .returningAll()
    .executeTakeFirst();
  return row ? toVesselRecord(row) : null;
}

export async function listVesselIds(tx: Scoped): Promise<string[]> {
  const rows = await tx.selectFrom('vessel').select('id').orderBy('id').execute();
  return rows.map(({ id }) => id);
}

/** Those among `ids` that name no vessel in scope. */
export async function listUnknownVesselIds(tx: Scoped, ids: readonly string[]): Promise<string[]> {
  const rows = await tx
    .selectFrom('vessel')
    .select('id')
    .where(sql<boolean>`id = any(${[...ids]}::uuid[])`)
    .execute();
  const known = new Set(rows.map(({ id }) => id));
  return ids.filter((id) => !known.has(id));
}
