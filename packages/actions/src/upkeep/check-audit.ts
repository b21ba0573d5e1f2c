/** Goes along an organisation's audit, as it stands at one instant. */
import type { Head } from '@garboard/db/audit/chain.ts';
import { type CheckedChain, checkChain } from '@garboard/db/audit/check-chain.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inSnapshot, wholeFleet } from '@garboard/db/scope.ts';

/** `kept`: a head that was kept elsewhere. */
export function checkAudit(db: Db, organisationId: string, kept?: Head): Promise<CheckedChain> {
  return inSnapshot(db, wholeFleet(organisationId), (tx) => checkChain(tx, organisationId, kept));
}
