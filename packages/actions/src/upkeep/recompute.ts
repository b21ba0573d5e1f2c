/**
 * Works every stored obligation out again from the facts and reckons its days a second time in another way, and reads
 * every finding from its entries. On a sound database nothing differs: what a change of an own rule has not come to
 * yet is worked through first.
 */
import { countDifferences, rebuildDayCounts } from '@garboard/db/due-list/check-counts.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { listVesselIds, lockVessel } from '@garboard/db/vessel/vessels.ts';
import { countUnconfirmed } from '@garboard/domain/rule/compiled/second-reckoning.ts';
import { readFindingsAgain } from '../finding/read-again.ts';
import { type Refreshed, refreshObligations } from '../item/refresh-obligations.ts';
import { finishRuleChanges } from '../rule/work-through-rule-changes.ts';

export type Recomputed = {
  readonly vessels: number;
  /** Obligations that differed from what the facts say. They are right now. */
  readonly obligations: number;
  /** Findings that differed from their entries, or in what they want of whom. They are right now. */
  readonly findings: number;
  /** Days whose count differed. They are right now. */
  readonly days: number;
  /** Obligations whose days the second reckoning does not find: which of the two is right, somebody must look. */
  readonly unconfirmed: number;
};

/** One transaction a vessel, so that nobody waits long; then the counts. */
export async function recompute(db: Db, organisationId: string): Promise<Recomputed> {
  await finishRuleChanges(db, organisationId);
  const ids = await inOrganisation(db, wholeFleet(organisationId), listVesselIds);
  let obligations = 0;
  let findings = 0;
  let unconfirmed = 0;
  for (const id of ids) {
    const refreshed = await inOrganisation(db, wholeFleet(organisationId), async (tx) => {
      await lockVessel(tx, id);
      findings += await readFindingsAgain(tx, organisationId, id);
      return refreshObligations(tx, organisationId, id);
    });
    obligations += refreshed.differing;
    unconfirmed += reckonAgain(refreshed);
  }
  const days = await inOrganisation(db, wholeFleet(organisationId), async (tx) => {
    const differing = await countDifferences(tx);
    if (differing > 0) await rebuildDayCounts(tx, organisationId);
    return differing;
  });
  return { vessels: ids.length, obligations, findings, days, unconfirmed };
}

function reckonAgain({ vessel, items, obligations }: Refreshed): number {
  const said = items.map(({ item, history }) => ({ history, obligations: obligations.get(item.id) ?? [] }));
  return countUnconfirmed(said, vessel);
}
