/** Tenancy as the catalogue sees it: what holds here holds for every statement the program will ever send, and for every new table. */
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { rows, TENANT_TABLES, VESSEL_COLUMN } from './catalogue.ts';

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
    const several = sql`select name from ${TENANT_TABLES} join pg_policy p on p.polrelid = t.oid and p.polpermissive
      group by name having count(*) > 1`;

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

/** Needed whole to work any vessel's dates out; of the vessels chosen they hold the ids, which the API leaves out. */
const OF_OWN_RULES = ['own_rule', 'own_rule_version', 'rule_change'];

/** These name no vessel, or only to whoever made the row. A table that is neither here nor narrowed fails below. */
const OF_THE_ORGANISATION = [
  'api_key',
  'api_key_use',
  'audit_head',
  'finding_terms',
  'idempotency',
  'invitation',
  'membership',
  ...OF_OWN_RULES,
  'safety_notice',
  'saved_view',
  'season',
  'share_link',
  'share_view',
  'sign_in_link',
  'survey_route',
];

describe('every table of an organisation, for somebody who may see some of its vessels', () => {
  it('is narrowed to those where it says whose a row is, on reading and on writing', async () => {
    const open = sql`select name from ${TENANT_TABLES} where ${VESSEL_COLUMN} is not null and not exists (
      select from pg_policy p where p.polrelid = t.oid and not p.polpermissive and p.polcmd = '*'
         and pg_get_expr(p.polqual, t.oid) ~ 'app.vessels' and pg_get_expr(p.polqual, t.oid) = pg_get_expr(p.polwithcheck, t.oid))`;

    expect(await rows(open)).toEqual([]);
  });

  it('is shut for reading where it speaks of the whole fleet, or known to name no vessel', async () => {
    const open = sql<{ name: string }>`select name from ${TENANT_TABLES} where ${VESSEL_COLUMN} is null and not exists (
      select from pg_policy p where p.polrelid = t.oid and not p.polpermissive and p.polcmd in ('*', 'r')
         and pg_get_expr(p.polqual, t.oid) ~ '^\\(current_setting.*app.vessels.* = .all') order by name`;

    expect((await rows(open)).map(({ name }) => name)).toEqual(OF_THE_ORGANISATION);
  });
});
