/** What the role that the application works as may do: as little as it needs. */
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { pools } from '../support/database.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { rows } from './catalogue.ts';

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
      const attempt = inOrganisation(pools.app, wholeFleet(id), (tx) => sql.raw(statement).execute(tx));
      await expect(attempt, statement).rejects.toThrow('permission denied');
    }
  });

  it('can end an override, but neither change what it says nor delete it', async () => {
    const { id } = await mintOrganisation(pools);
    const attempt = (statement: string) =>
      inOrganisation(pools.app, wholeFleet(id), (tx) => sql.raw(statement).execute(tx));

    await expect(attempt("update override set period = 'P1Y'")).rejects.toThrow('permission denied');
    await expect(attempt('delete from override')).rejects.toThrow('permission denied');
    await expect(attempt('update override set ended_on = null')).resolves.toBeDefined();
  });

  it('can add a version of an own rule, but neither change nor delete one', async () => {
    const { id } = await mintOrganisation(pools);
    const attempt = (statement: string) =>
      inOrganisation(pools.app, wholeFleet(id), (tx) => sql.raw(statement).execute(tx));

    await expect(attempt('update own_rule_version set definition = null')).rejects.toThrow('permission denied');
    await expect(attempt('delete from own_rule_version')).rejects.toThrow('permission denied');
    await expect(attempt('update rule_change set kinds = null')).rejects.toThrow('permission denied');
  });

  it('can make no table and switch no policy off', async () => {
    for (const statement of ['create table mine (id integer)', 'alter table vessel disable row level security']) {
      await expect(sql.raw(statement).execute(pools.app), statement).rejects.toThrow(/permission denied|must be owner/);
    }
  });
});
