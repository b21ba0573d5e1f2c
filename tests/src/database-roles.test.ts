/** Tenancy as the catalogue and the server see it: what holds here holds for every statement the program will ever send. */
import { randomUUID } from 'node:crypto';
import { insertApiKey, type NewSecret } from '@garboard/db/organisation/credentials.ts';
import { mintToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation } from '@garboard/db/scope.ts';
import { type RawBuilder, sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { pools } from './support/database.ts';
import { mintOrganisation, NOW } from './support/organisation.ts';

const keyOf = (organisationId: string): NewSecret & { name: string } => ({
  ...{ token: mintToken('api_key', organisationId, randomUUID()), role: 'viewer', name: 'planted' },
  ...{ now: NOW, expiresAt: new Date(NOW.getTime() + 1000) },
});

async function rows<T>(query: RawBuilder<T>): Promise<T[]> {
  return (await query.execute(pools.owner)).rows;
}

const TENANT_TABLES = sql`(select c.oid, c.relname::text as name, c.relrowsecurity, c.relforcerowsecurity, c.relowner
  from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'organisation_id' and not a.attisdropped
 where c.relkind in ('r', 'p') and c.relnamespace = 'public'::regnamespace) t`;

describe('every table of an organisation', () => {
  it('exists at all: the checks below look at something', async () => {
    const names = (await rows(sql<{ name: string }>`select name from ${TENANT_TABLES}`)).map(({ name }) => name);

    expect(names).toEqual(expect.arrayContaining(['vessel', 'item', 'fact', 'obligation', 'audit', 'api_key']));
  });

  it('has row-level security enabled and forced', async () => {
    const open = sql`select name from ${TENANT_TABLES} where not (relrowsecurity and relforcerowsecurity)`;

    expect(await rows(open)).toEqual([]);
  });

  it('has a policy for every command, on reading (using) and on writing (with check), by the organisation', async () => {
    const unguarded = sql`select name from ${TENANT_TABLES} where not exists (
      select from pg_policy p where p.polrelid = t.oid and p.polcmd = '*'
         and pg_get_expr(p.polqual, t.oid) ~ '^\\(organisation_id = .*app.organisation'
         and pg_get_expr(p.polwithcheck, t.oid) ~ '^\\(organisation_id = .*app.organisation')`;

    expect(await rows(unguarded)).toEqual([]);
  });

  it('has no second policy that would let more through', async () => {
    const several = sql`select name from ${TENANT_TABLES} join pg_policy p on p.polrelid = t.oid group by name having count(*) > 1`;

    expect(await rows(several)).toEqual([]);
  });

  it('starts every primary, unique and foreign key with the organisation', async () => {
    const keys = sql`select name, c.conname from ${TENANT_TABLES}
      join pg_constraint c on c.conrelid = t.oid and c.contype in ('p', 'u', 'f')
      join pg_attribute a on a.attrelid = t.oid and a.attnum = c.conkey[1] where a.attname <> 'organisation_id'`;
    const indexes = sql`select name, i.indexrelid::regclass::text from ${TENANT_TABLES} join pg_index i on i.indrelid = t.oid
      join pg_attribute a on a.attrelid = t.oid and a.attnum = i.indkey[0] where a.attname <> 'organisation_id'`;

    expect(await rows(keys)).toEqual([]);
    expect(await rows(indexes)).toEqual([]);
  });

  it('has a primary key', async () => {
    const keyless = sql`select name from ${TENANT_TABLES} where not exists (
      select from pg_constraint c where c.conrelid = t.oid and c.contype = 'p')`;

    expect(await rows(keyless)).toEqual([]);
  });
});

describe('the application role', () => {
  it('is what the application pool runs as', async () => {
    const { rows: who } = await sql<{ current_user: string }>`select current_user`.execute(pools.app);

    expect(who).toEqual([{ current_user: 'garboard_app' }]);
  });

  it('is no superuser, bypasses no policy, makes no roles and owns nothing', async () => {
    const powers = sql`select rolsuper, rolbypassrls, rolcreaterole, rolcreatedb, rolcanlogin from pg_roles where rolname = 'garboard_app'`;
    const owned = sql`select relname from pg_class where relowner = 'garboard_app'::regrole`;
    const none = { rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false, rolcanlogin: false };

    expect(await rows(powers)).toEqual([none]);
    expect(await rows(owned)).toEqual([]);
  });

  it('can neither change nor delete facts and audit rows', async () => {
    const { id } = await mintOrganisation(pools);
    const statements = [
      'update fact set note = null',
      'delete from fact',
      'update audit set actor = null',
      'delete from audit',
    ];

    for (const statement of [...statements, 'truncate fact', 'truncate audit']) {
      const attempt = inOrganisation(pools.app, id, (tx) => sql.raw(statement).execute(tx));
      await expect(attempt, statement).rejects.toThrow('permission denied');
    }
  });

  it('can end an override, but neither change what it says nor delete it', async () => {
    const { id } = await mintOrganisation(pools);
    const attempt = (statement: string) => inOrganisation(pools.app, id, (tx) => sql.raw(statement).execute(tx));

    await expect(attempt("update override set period = 'P1Y'")).rejects.toThrow('permission denied');
    await expect(attempt('delete from override')).rejects.toThrow('permission denied');
    await expect(attempt('update override set ended_on = null')).resolves.toBeDefined();
  });

  it('can make no table and switch no policy off', async () => {
    for (const statement of ['create table mine (id integer)', 'alter table vessel disable row level security']) {
      await expect(sql.raw(statement).execute(pools.app), statement).rejects.toThrow(/permission denied|must be owner/);
    }
  });
});

describe('the scope', () => {
  it('missing is an error, never all rows', async () => {
    await expect(sql`select * from vessel`.execute(pools.app)).rejects.toThrow(/app.organisation|invalid input syntax/);
  });

  it('empty is an error, never all rows', async () => {
    await expect(inOrganisation(pools.app, '', (tx) => sql`select * from vessel`.execute(tx))).rejects.toThrow('uuid');
  });

  it('ends with its transaction', async () => {
    const { id } = await mintOrganisation(pools);

    await pools.app.connection().execute(async (connection) => {
      await inOrganisation(connection, id, (tx) => sql`select * from vessel`.execute(tx));
      await expect(sql`select * from vessel`.execute(connection)).rejects.toThrow('uuid');
    });
  });

  it('shows the rows of its own organisation and no others', async () => {
    const [ours, theirs] = [await mintOrganisation(pools), await mintOrganisation(pools)];
    await inOrganisation(pools.app, theirs.id, (tx) => insertApiKey(tx, keyOf(theirs.id)));
    const keysOf = (id: string) =>
      inOrganisation(pools.app, id, (tx) => tx.selectFrom('api_key').select('name').execute());

    expect(await keysOf(theirs.id)).toEqual([{ name: 'planted' }]);
    expect(await keysOf(ours.id)).toEqual([]);
  });

  it("takes no row of another organisation's", async () => {
    const [ours, theirs] = [await mintOrganisation(pools), await mintOrganisation(pools)];
    const attempt = inOrganisation(pools.app, ours.id, (tx) => insertApiKey(tx, keyOf(theirs.id)));

    await expect(attempt).rejects.toThrow('violates row-level security policy');
  });
});
