/** Every statement on a tenant table runs inside a scope: one organisation and some or all of her vessels, for one transaction only. */
import { sql, type Transaction } from 'kysely';
import type { Db } from './pool.ts';
import type { Database } from './schema.ts';

export type Scoped = Transaction<Database>;

/** `vesselIds`: UUIDs of the vessels that can be seen and touched. An empty list is none of them. */
export type Scope = { readonly organisationId: string; readonly vesselIds: 'all' | readonly string[] };

export const wholeFleet = (organisationId: string): Scope => ({ organisationId, vesselIds: 'all' });

/** Runs `work` in one transaction that sees and touches the rows of the scope and no others. */
export function inOrganisation<T>(db: Db, scope: Scope, work: (tx: Scoped) => Promise<T>): Promise<T> {
  return db.transaction().execute(async (tx) => {
    await enterScope(tx, scope);
    return work(tx);
  });
}

/** From here to the transaction's end this is the scope. Administration alone goes from one to another. */
export async function enterScope(tx: Scoped, { organisationId, vesselIds }: Scope): Promise<void> {
  const vessels = vesselIds === 'all' ? vesselIds : `{${vesselIds.join(',')}}`;
  await sql`select set_config('app.organisation', ${organisationId}, true), set_config('app.vessels', ${vessels}, true)`.execute(
    tx,
  );
}
