/** Questions to the catalogue of the run's database. */
import { type RawBuilder, sql } from 'kysely';
import { pools } from '../support/database.ts';

export async function rows<T>(query: RawBuilder<T>): Promise<T[]> {
  return (await query.execute(pools.owner)).rows;
}

/** Found by their column: a new table is one of them from the start. */
export const TENANT_TABLES = sql`(select c.oid, c.relname::text as name, c.relrowsecurity, c.relforcerowsecurity, c.relowner
  from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'organisation_id' and not a.attisdropped
 where c.relkind in ('r', 'p') and c.relnamespace = 'public'::regnamespace) t`;

/** Where the table says which vessel a row belongs to; `null` where it does not. */
export const VESSEL_COLUMN = sql`(select a.attname::text from pg_attribute a
  where a.attrelid = t.oid and not a.attisdropped
    and (a.attname in ('vessel_id', 'item_id') or (t.name = 'vessel' and a.attname = 'id'))
  order by a.attname = 'vessel_id' desc limit 1)`;
