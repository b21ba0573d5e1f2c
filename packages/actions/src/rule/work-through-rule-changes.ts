/**
 * Works out again what changes of own rules touch, and nothing else: in batches, each a short transaction that
 * moves the change's cursor too. Whoever is stopped in the middle goes on where the last batch ended.
 */
import type { Db } from '@garboard/db/pool.ts';
import {
  advanceRuleChange,
  finishRuleChange,
  lockUnfinishedChange,
  nextItemIds,
  nextVesselIds,
  type RuleChangeRecord,
} from '@garboard/db/rule/rule-changes.ts';
import { inOrganisation, type Scoped, wholeFleet } from '@garboard/db/scope.ts';
import type { VesselRecord } from '@garboard/db/vessel/vessel-record.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';
import { asUpkeep } from '../organisation/as-upkeep.ts';
import { beginWhatIsDue } from './begin-rule-change.ts';

/** What one transaction works out at most: a part of a second's work. House convention, no source. */
const ITEMS_A_BATCH = 200;
/** How many vessels one transaction looks at, most of them without anything to do. */
const VESSELS_A_BATCH = 50;

export type WorkedThrough = { readonly begun: number; readonly finished: number };

/** Begins what is due and goes on until nothing is left, or `stop` says so between two batches. */
export async function workThroughRuleChanges(
  db: Db,
  organisationId: string,
  now: Date,
  stop?: AbortSignal,
): Promise<WorkedThrough> {
  const begun = await inOrganisation(db, wholeFleet(organisationId), (tx) =>
    beginWhatIsDue(asUpkeep(db, tx, organisationId, now)),
  );
  return { begun, finished: await finishRuleChanges(db, organisationId, stop) };
}

/** Only what has begun. How many were brought to their end. */
export async function finishRuleChanges(db: Db, organisationId: string, stop?: AbortSignal): Promise<number> {
  let finished = 0;
  while (!stop?.aborted) {
    const done = await inOrganisation(db, wholeFleet(organisationId), (tx) => workOneBatch(tx, organisationId));
    if (done === 'nothing left') break;
    if (done === 'finished') finished++;
  }
  return finished;
}

async function workOneBatch(tx: Scoped, organisationId: string): Promise<'batch' | 'finished' | 'nothing left'> {
  const change = await lockUnfinishedChange(tx);
  if (!change) return 'nothing left';
  const ids = await nextVesselIds(tx, change, VESSELS_A_BATCH);
  for (const id of ids) {
    const items = await lockTouchedItems(tx, change, id);
    if (items.length === 0) continue;
    const { differing } = await refreshObligations(tx, organisationId, id, items);
    const itemId = items.length < ITEMS_A_BATCH ? null : (items.at(-1) ?? null);
    await advanceRuleChange(tx, change.id, { vesselId: id, itemId }, { items: items.length, obligations: differing });
    return 'batch';
  }
  return leaveBehind(tx, change, ids);
}

/** None of these has anything to do. */
async function leaveBehind(tx: Scoped, { id }: RuleChangeRecord, vesselIds: readonly string[]) {
  const last = vesselIds.at(-1);
  if (last !== undefined && vesselIds.length === VESSELS_A_BATCH) {
    await advanceRuleChange(tx, id, { vesselId: last, itemId: null }, { items: 0, obligations: 0 });
    return 'batch';
  }
  await finishRuleChange(tx, id);
  return 'finished';
}

/** Vessels are held in the order of their ids, here as everywhere. */
async function lockTouchedItems(tx: Scoped, change: RuleChangeRecord, id: string): Promise<readonly string[]> {
  const vessel = await lockVessel(tx, id);
  if (!vessel || !isTouched(change, vessel)) return [];
  const after = change.cursor?.vesselId === id ? change.cursor.itemId : null;
  return nextItemIds(tx, id, change.touch.kinds, ITEMS_A_BATCH, after);
}

function isTouched({ touch }: RuleChangeRecord, { id, schemes }: VesselRecord): boolean {
  return touch.everyVessel || touch.vesselIds.includes(id) || schemes.some((scheme) => touch.schemes.includes(scheme));
}
