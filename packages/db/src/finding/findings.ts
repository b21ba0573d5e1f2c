/** Findings one by one: written with what their entries come to, and only over the version that was read. */
import type { Finding } from '@garboard/domain/finding/finding.ts';
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';
import { type FindingRecord, findingColumns, type StoredFinding, toFindingRecord } from './finding-record.ts';

export async function loadFinding(tx: Scoped, findingId: string): Promise<FindingRecord | null> {
  const row = await tx.selectFrom('finding').selectAll().where('id', '=', findingId).executeTakeFirst();
  return row ? toFindingRecord(row) : null;
}

/** The vessel's row must be locked by the caller: her findings change one after another. */
export async function insertFinding(tx: Scoped, organisationId: string, record: FindingRecord): Promise<void> {
  await tx
    .insertInto('finding')
    .values({
      organisation_id: organisationId,
      id: record.id,
      vessel_id: record.vesselId,
      number: record.number,
      created_at: record.createdAt,
      ...findingColumns(record.finding),
    })
    .execute();
}

export async function nextNumber(tx: Scoped, vesselId: string): Promise<number> {
  const { rows } = await sql<{ next: number }>`
    select coalesce(max(number), 0) + 1 as next from finding where vessel_id = ${vesselId}::uuid`.execute(tx);
  return rows[0]?.next ?? 1;
}

/** The version after the change; `null` when somebody was faster. */
export async function saveFinding(
  tx: Scoped,
  { id, version }: FindingRecord,
  finding: Finding,
): Promise<number | null> {
  const { numUpdatedRows } = await tx
    .updateTable('finding')
    .set({ ...findingColumns(finding), version: version + 1 })
    .where('id', '=', id)
    .where('version', '=', version)
    .executeTakeFirstOrThrow();
  return numUpdatedRows === 1n ? version + 1 : null;
}

/** All of a vessel's, with the columns that they are searched and sorted by. */
export async function loadFindings(tx: Scoped, vesselId: string): Promise<StoredFinding[]> {
  const rows = await tx.selectFrom('finding').selectAll().where('vessel_id', '=', vesselId).orderBy('id').execute();
  return rows.map((columns) => ({ record: toFindingRecord(columns), columns }));
}

export async function loadFindingsByIds(tx: Scoped, ids: readonly string[]): Promise<FindingRecord[]> {
  if (ids.length === 0) return [];
  const rows = await tx
    .selectFrom('finding')
    .selectAll()
    .where('id', 'in', [...ids])
    .orderBy('id')
    .execute();
  return rows.map(toFindingRecord);
}

/** Open ones of a vessel, in the order in which they were found. */
export async function loadOpenFindings(tx: Scoped, vesselId: string): Promise<FindingRecord[]> {
  const rows = await tx
    .selectFrom('finding')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .where('is_open', '=', true)
    .orderBy('id')
    .execute();
  return rows.map(toFindingRecord);
}

/** In the one order in which everybody locks vessels. */
export async function listVesselsWithOpenFindings(tx: Scoped): Promise<string[]> {
  const rows = await tx
    .selectFrom('finding')
    .select('vessel_id')
    .distinct()
    .where('is_open', '=', true)
    .orderBy('vessel_id')
    .execute();
  return rows.map(({ vessel_id }) => vessel_id);
}
