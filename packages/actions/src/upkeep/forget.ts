/** Forgets what has run out and is of no further use: sessions and the keys of repeated requests. */
import { forgetKeys } from '@garboard/db/idempotency/idempotency.ts';
import { deleteRunOutSessions } from '@garboard/db/organisation/credentials.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';

/** A phone can be without a signal for days; a repeat after a week is a new request. House convention, no source. */
const KEPT_MS = 7 * 86_400_000;

export function forget(db: Db, organisationId: string, now: Date): Promise<{ keys: number; sessions: number }> {
  return inOrganisation(db, wholeFleet(organisationId), async (tx) => ({
    keys: await forgetKeys(tx, new Date(now.getTime() - KEPT_MS)),
    sessions: await deleteRunOutSessions(tx, now),
  }));
}
