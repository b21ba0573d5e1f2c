/** Who belongs to the organisation of the scope. Whoever left stays as a row. */
import type { Grant } from '@garboard/domain/organisation/membership.ts';
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import type { Selectable } from 'kysely';
import type { Scoped } from '../scope.ts';
import type { MembershipTable } from './tables.ts';

export type MembershipRecord = Grant & {
  readonly id: string;
  readonly personId: string;
  readonly joinedAt: string;
  readonly version: number;
};

/** Held until the transaction ends; `null` for who does not belong to the organisation, or not any more. */
export async function lockMembership(tx: Scoped, personId: string): Promise<MembershipRecord | null> {
  const row = await tx
    .selectFrom('membership')
    .selectAll()
    .where('person_id', '=', personId)
    .where('ended_at', 'is', null)
    .forUpdate()
    .executeTakeFirst();
  return row ? toRecord(row) : null;
}

export async function insertMembership(
  tx: Scoped,
  organisationId: string,
  { id, personId, joinedAt, ...grant }: Omit<MembershipRecord, 'version'>,
): Promise<void> {
  await tx
    .insertInto('membership')
    .values({ organisation_id: organisationId, id, person_id: personId, joined_at: joinedAt, ...columnsOf(grant) })
    .execute();
}

export async function updateMembership(tx: Scoped, { id, version, ...grant }: MembershipRecord): Promise<void> {
  await tx
    .updateTable('membership')
    .set({ ...columnsOf(grant), version })
    .where('id', '=', id)
    .execute();
}

export async function endMembership(tx: Scoped, { id, version }: MembershipRecord, now: Date): Promise<void> {
  await tx
    .updateTable('membership')
    .set({ ended_at: now, version: version + 1 })
    .where('id', '=', id)
    .execute();
}

/** The persons who own the organisation now. */
export async function listOwners(tx: Scoped): Promise<string[]> {
  const rows = await tx
    .selectFrom('membership')
    .select('person_id')
    .where('role', '=', 'owner')
    .where('ended_at', 'is', null)
    .orderBy('joined_at')
    .orderBy('id')
    .execute();
  return rows.map(({ person_id }) => person_id);
}

/** Which of these are vessels of the scope. */
export async function knownVessels(tx: Scoped, ids: readonly string[]): Promise<Set<string>> {
  if (ids.length === 0) return new Set();
  const rows = await tx
    .selectFrom('vessel')
    .select('id')
    .where('id', 'in', [...ids])
    .execute();
  return new Set(rows.map(({ id }) => id));
}

export const columnsOf = ({ role, vesselIds }: Grant) => ({
  role,
  vessel_ids: vesselIds === 'all' ? null : [...vesselIds],
});

/** A stored role is one of ours: the table's own check says so. */
export function roleOf(text: string): Role {
  const role = ROLES.find((each) => each === text);
  if (!role) throw new Error(`no role: ${text}`);
  return role;
}

export function grantOf(row: { role: string; vessel_ids: string[] | null }): Grant {
  return { role: roleOf(row.role), vesselIds: row.vessel_ids ?? 'all' };
}

function toRecord(row: Selectable<MembershipTable>): MembershipRecord {
  const { id, person_id: personId, joined_at, version } = row;
  return { ...grantOf(row), id, personId, joinedAt: joined_at.toISOString(), version };
}
