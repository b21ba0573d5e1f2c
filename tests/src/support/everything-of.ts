/** Whether anything was written besides when a key was last used: a fingerprint of every row that belongs to an organisation, by table. */
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { sql } from 'kysely';
import { pools } from './database.ts';

export async function everythingOf(organisationId: string): Promise<Record<string, string>> {
  const tables = await tenantTables();
  const prints = tables.map(
    (table) =>
      sql`select ${sql.lit(table)} as name, md5(coalesce(string_agg(t::text, chr(10) order by t::text), '')) as print from ${sql.table(table)} t`,
  );
  return inOrganisation(pools.app, wholeFleet(organisationId), async (tx) => {
    const { rows } = await sql<{ name: string; print: string }>`${sql.join(prints, sql` union all `)}`.execute(tx);
    return Object.fromEntries(rows.map(({ name, print }) => [name, print]));
  });
}

let known: string[] | undefined;

async function tenantTables(): Promise<string[]> {
  known ??= (
    await sql<{ name: string }>`
      select c.relname as name from pg_class c join pg_attribute a on a.attrelid = c.oid
      where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and a.attname = 'organisation_id'
        and has_table_privilege(c.oid, 'select')
        and c.relname <> 'api_key_use'
      order by 1`.execute(pools.app)
  ).rows.map(({ name }) => name);
  if (known.length === 0) throw new Error('no table of organisations was found: the fingerprint says nothing');
  return known;
}
