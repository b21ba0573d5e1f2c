/** Forgets what has run out and is of no further use: the keys of repeated requests. */
import { forgetKeys } from '@garboard/db/idempotency/idempotency.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';

/** A phone can be without a signal for days; a repeat after a week is a new request. House convention, no source. */
const KEPT_MS = 7 * 86_400_000;

/** Answers with how many. */
export function forget(db: Db, organisationId: string, now: Date): Promise<number> {
  return inOrganisation(db, wholeFleet(organisationId), (tx) => forgetKeys(tx, new Date(now.getTime() - KEPT_MS)));
}
