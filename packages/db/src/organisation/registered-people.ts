/** The register of everybody with an account. Administration only: needs the owner's pool. */
import { sql } from 'kysely';
import type { Db } from '../pool.ts';
import type { Scoped } from '../scope.ts';

export type Registered = { readonly id: string; readonly organisationIds: readonly string[] };

/** `email` in lower case. */
export async function findPersonId(owner: Db | Scoped, email: string): Promise<Registered | null> {
  const { rows } = await sql<{ id: string; organisation_ids: string[] }>`
    select u.id, array(select b.organisation_id from auth.belonging b where b.person_id = u.id) as organisation_ids
      from auth."user" u where u.email = ${email}`.execute(owner);
  return rows[0] ? { id: rows[0].id, organisationIds: rows[0].organisation_ids } : null;
}

/** With a verified address and no way in but a link. Answers with the id. */
export async function insertPerson(owner: Scoped, { name, email }: { name: string; email: string }): Promise<string> {
  const { rows } = await sql<{ id: string }>`
    insert into auth."user" (name, email, "emailVerified") values (${name}, ${email}, true) returning id`.execute(
    owner,
  );
  if (!rows[0]) throw new Error('the person was not kept');
  return rows[0].id;
}

/** Sessions, half-done verifications and counted attempts that are of no further use. Answers with how many sessions. */
export async function forgetRunOutSessions(owner: Db): Promise<number> {
  const { rows } = await sql<{ n: number }>`
    with gone as (delete from auth.session where "expiresAt" <= now() returning 1),
      old as (delete from auth.verification where "expiresAt" <= now()),
      counted as (delete from auth."rateLimit" where "lastRequest" < extract(epoch from now() - interval '1 day') * 1000)
    select count(*)::integer as n from gone`.execute(owner);
  return rows[0]?.n ?? 0;
}

/** The key that cookies are signed with where none is configured: made once, the same for every process. */
export async function signingSecret(owner: Db, fresh: string): Promise<string> {
  await sql`insert into auth.signing_secret (secret) values (${fresh}) on conflict do nothing`.execute(owner);
  const { rows } = await sql<{ secret: string }>`select secret from auth.signing_secret`.execute(owner);
  return rows[0]?.secret ?? fresh;
}
