/**
 * Keeping a file and sweeping one away exclude each other, hash by hash: who keeps it waits, who sweeps goes on to
 * the next. Held to the end of the transaction.
 */
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';

const key = (organisationId: string, sha256: string) => sql`hashtextextended(${`${organisationId}/${sha256}`}, 0)`;

export async function lockBlob(tx: Scoped, organisationId: string, sha256: string): Promise<void> {
  await sql`select pg_advisory_xact_lock(${key(organisationId, sha256)})`.execute(tx);
}

export async function tryLockBlob(tx: Scoped, organisationId: string, sha256: string): Promise<boolean> {
  const { rows } = await sql<{
    locked: boolean;
  }>`select pg_try_advisory_xact_lock(${key(organisationId, sha256)}) as locked`.execute(tx);
  return rows[0]?.locked ?? false;
}
