/**
 * Works out a vessel's obligations from her facts and writes what differs, with everything that is counted
 * from them. Cost grows with what changed. The vessel's row must be locked by the caller.
 */
import { isDeepStrictEqual } from 'node:util';
import { refreshVesselStanding, shiftDayCounts } from '@garboard/db/due-list/day-counts.ts';
import { setWithdrawn } from '@garboard/db/item/items.ts';
import { type ItemWithHistory, loadItemHistories, loadVesselHistory } from '@garboard/db/item/load-histories.ts';
import { toObligationColumns } from '@garboard/db/item/obligation-record.ts';
import {
  deleteObligations,
  insertObligations,
  loadObligationRows,
  type ObligationKey,
  type ObligationRow,
} from '@garboard/db/item/obligations.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { isWithdrawn, type VesselHistory, workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';

type Columns = ReturnType<typeof toObligationColumns>;

/** How many stored rows differed from what the facts say, the obligations of each item, and what they were worked out from. */
export type Refreshed = {
  readonly differing: number;
  readonly vessel: VesselHistory;
  readonly items: readonly ItemWithHistory[];
  readonly obligations: ReadonlyMap<string, readonly Obligation[]>;
};

/** All of the vessel's items, or only `itemIds`. */
export async function refreshObligations(
  tx: Scoped,
  organisationId: string,
  vesselId: string,
  itemIds?: readonly string[],
): Promise<Refreshed> {
  const vessel = await loadVesselHistory(tx, vesselId);
  const items = await loadItemHistories(tx, vesselId, itemIds);
  if (items.length === 0) return { differing: 0, vessel, items, obligations: new Map() };
  const obligations = new Map(items.map(({ item, history }) => [item.id, workOutObligations(history, vessel)]));
  const wanted = [...obligations].flatMap(([itemId, all]) =>
    all.map((each) => toObligationColumns({ organisationId, vesselId, itemId }, each)),
  );
  const stored = await loadObligationRows(tx, [...obligations.keys()]);
  const differing = await writeDifference(tx, organisationId, stored, wanted);
  await markWithdrawn(tx, items);
  await refreshVesselStanding(tx, vesselId);
  return { differing, vessel, items, obligations };
}

async function writeDifference(
  tx: Scoped,
  organisationId: string,
  stored: ObligationRow[],
  wanted: Columns[],
): Promise<number> {
  const kept = new Map(stored.map((row) => [keyText(row), row]));
  const stays = new Set(wanted.filter((row) => isSame(kept.get(keyText(row)), row)).map(keyText));
  const come = wanted.filter((row) => !stays.has(keyText(row)));
  const gone = stored.filter((row) => !stays.has(keyText(row)));
  await deleteObligations(tx, gone);
  await insertObligations(tx, come);
  await shiftDayCounts(tx, organisationId, gone, come as ObligationRow[]);
  return new Set([...gone, ...come].map(keyText)).size;
}

const keyText = ({ item_id, rule_id, duty }: ObligationKey) => `${item_id} ${rule_id} ${duty}`;

function isSame(stored: ObligationRow | undefined, wanted: Columns): boolean {
  return (
    stored !== undefined &&
    isDeepStrictEqual(stored, { ...wanted, windows: parsed(wanted.windows), explanation: parsed(wanted.explanation) })
  );
}

const parsed = (json: string): unknown => JSON.parse(json);

/** The item's own mark follows from its facts like everything else. */
async function markWithdrawn(tx: Scoped, items: readonly ItemWithHistory[]): Promise<void> {
  const turned = (to: boolean) =>
    items
      .filter(({ item, history }) => isWithdrawn(history) === to && item.withdrawn !== to)
      .map(({ item }) => item.id);
  await setWithdrawn(tx, turned(true), true);
  await setWithdrawn(tx, turned(false), false);
}
