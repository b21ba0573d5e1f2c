/** People as their organisation sees them: a name beside each membership. */
import { sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { grantOf, type MembershipRecord } from './memberships.ts';

/** `name` and `email` are `null` when the person was erased. */
export type Member = MembershipRecord & { readonly name: string | null; readonly email: string | null };

type Row = {
  id: string;
  person_id: string;
  role: string;
  vessel_ids: string[] | null;
  joined_at: Date;
  version: number;
  name: string | null;
  email: string | null;
};

/** Those who belong to it now, in the order in which they came. */
export async function listMembers(tx: Scoped, limit: number, after?: { id: string }): Promise<Page<Member>> {
  const from = after ? sql`and m.id > ${after.id}` : sql``;
  const { rows } = await sql<Row>`
    select m.id, m.person_id, m.role, m.vessel_ids, m.joined_at, m.version, p.name, p.email
      from membership m left join people_of_organisation() p on p.person_id = m.person_id
     where m.ended_at is null ${from}
     order by m.id limit ${sql.lit(limit + 1)}`.execute(tx);
  return pageOf(rows.map(toMember), limit);
}

export async function loadMember(tx: Scoped, personId: string): Promise<Member | null> {
  const { rows } = await sql<Row>`
    select m.id, m.person_id, m.role, m.vessel_ids, m.joined_at, m.version, p.name, p.email
      from membership m left join people_of_organisation() p on p.person_id = m.person_id
     where m.ended_at is null and m.person_id = ${personId}`.execute(tx);
  return rows[0] ? toMember(rows[0]) : null;
}

/** Whether somebody with that address belongs to it now. */
export async function isMemberAddress(tx: Scoped, email: string): Promise<boolean> {
  const { rows } = await sql`
    select from membership m join people_of_organisation() p on p.person_id = m.person_id
     where m.ended_at is null and p.email = ${email}`.execute(tx);
  return rows.length > 0;
}

function toMember(row: Row): Member {
  const { id, person_id: personId, joined_at, version, name, email } = row;
  return { ...grantOf(row), id, personId, joinedAt: joined_at.toISOString(), version, name, email };
}
