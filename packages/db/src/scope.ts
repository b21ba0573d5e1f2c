/** Every statement on a tenant table runs inside a scope: one organisation, set for one transaction only. */
import { sql, type Transaction } from 'kysely';
import type { Db } from './pool.ts';
import type { Database } from './schema.ts';

export type Scoped = Transaction<Database>;

/** Runs `work` in one transaction that sees and touches the rows of `organisationId` and no others. */
export function inOrganisation<T>(db: Db, organisationId: string, work: (tx: Scoped) => Promise<T>): Promise<T> {
  return db.transaction().execute(async (tx) => {
    await enterOrganisation(tx, organisationId);
    return work(tx);
  });
}

/** From here to the transaction's end the scope is this organisation. Administration alone goes from one to another. */
export async function enterOrganisation(tx: Scoped, organisationId: string): Promise<void> {
  await sql`select set_config('app.organisation', ${organisationId}, true)`.execute(tx);
}
