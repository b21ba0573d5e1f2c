/** Every statement on a tenant table runs inside a scope: one organisation and some or all of her vessels, for one transaction only. */
import { sql, type Transaction } from 'kysely';
import { appendNoted, keepNotes } from './audit/append-audit.ts';
import type { Db } from './pool.ts';
import type { Database } from './schema.ts';

export type Scoped = Transaction<Database>;

/** `vesselIds`: UUIDs of the vessels that can be seen and touched. An empty list is none of them. */
export type Scope = { readonly organisationId: string; readonly vesselIds: 'all' | readonly string[] };

export const wholeFleet = (organisationId: string): Scope => ({ organisationId, vesselIds: 'all' });

/** Runs `work` in one transaction that sees and touches the rows of the scope and no others. */
export function inOrganisation<T>(db: Db, scope: Scope, work: (tx: Scoped) => Promise<T>): Promise<T> {
  return inScopes(db, async (tx) => {
    await enterScope(tx, scope);
    return work(tx);
  });
}

/** The same without a scope yet: administration alone goes from one to another, in one transaction. */
export function inScopes<T>(db: Db, work: (tx: Scoped) => Promise<T>): Promise<T> {
  return db.transaction().execute(async (tx) => {
    keepNotes(tx);
    const answer = await work(tx);
    await appendNoted(tx);
    return answer;
  });
}

/** Reads everything as it stood at one instant, however long it takes; others write meanwhile. */
export function inSnapshot<T>(db: Db, scope: Scope, work: (tx: Scoped) => Promise<T>): Promise<T> {
  const transaction = db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only');
  return transaction.execute(async (tx) => {
    await enterScope(tx, scope);
    return work(tx);
  });
}

/** From here to the next call or the transaction's end this is the scope. */
export async function enterScope(tx: Scoped, { organisationId, vesselIds }: Scope): Promise<void> {
  await appendNoted(tx);
  const vessels = vesselIds === 'all' ? vesselIds : `{${vesselIds.join(',')}}`;
  await sql`select set_config('app.organisation', ${organisationId}, true), set_config('app.vessels', ${vessels}, true)`.execute(
    tx,
  );
}
