/** Whose session it is. Asked before there is a scope, through functions of the owner's: the tables are out of reach. */
import type { Grant } from '@garboard/domain/organisation/membership.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import { sql } from 'kysely';
import type { Db } from '../pool.ts';
import type { Scoped } from '../scope.ts';
import { grantOf, roleOf } from './memberships.ts';
import type { OrganisationRecord } from './organisations.ts';

export type Person = {
  readonly id: string;
  readonly sessionId: string;
  readonly name: string;
  readonly email: string;
  /** Where they are now, and what they may there; `null` when they belong nowhere, or not there any more. */
  readonly at: (Grant & { readonly organisationId: string }) | null;
};

type Row = {
  person_id: string;
  session_id: string;
  name: string;
  email: string;
  organisation_id: string | null;
  role: string | null;
  vessel_ids: string[] | null;
};

/** One question a request. `null` when the session never was, was ended, or has run out. */
export async function findPerson(app: Db, sessionToken: string): Promise<Person | null> {
  const { rows } = await sql<Row>`select * from person_of_session(${sessionToken})`.execute(app);
  return rows[0] ? toPerson(rows[0]) : null;
}

function toPerson(row: Row): Person {
  const { person_id: id, session_id: sessionId, name, email, organisation_id: organisationId, role, vessel_ids } = row;
  const at = organisationId !== null && role !== null ? { organisationId, ...grantOf({ role, vessel_ids }) } : null;
  return { id, sessionId, name, email, at };
}

export type Belonging = OrganisationRecord & { readonly role: Role };

/** The organisations the person belongs to, by name. */
export async function listOrganisationsOf(app: Db | Scoped, personId: string): Promise<Belonging[]> {
  const { rows } = await sql<{ organisation_id: string; name: string; time_zone: string; role: string }>`
    select * from organisations_of(${personId})`.execute(app);
  return rows.map(({ organisation_id: id, name, time_zone: timeZone, role }) => ({
    id,
    name,
    timeZone,
    role: roleOf(role),
  }));
}

/** Takes the session to that organisation; `false` when the person does not belong to it. */
export async function goToOrganisation(tx: Scoped, sessionId: string, organisationId: string): Promise<boolean> {
  const { rows } = await sql<{ gone: boolean }>`
    select go_to_organisation(${sessionId}, ${organisationId}) as gone`.execute(tx);
  return rows[0]?.gone ?? false;
}

/** Name, address and every way in are gone; the id stays. */
export async function erasePerson(tx: Scoped, personId: string): Promise<void> {
  await sql`select erase_person(${personId})`.execute(tx);
}
