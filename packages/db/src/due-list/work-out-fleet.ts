/**
 * The fleet's obligations worked out anew from its facts: for a day gone by, or for what was known then.
 * Costs the whole fleet, so nothing that is asked every morning comes this way.
 */
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { type Cut, workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import { type ItemWithHistory, loadItemHistories, loadVesselHistory } from '../item/load-histories.ts';
import type { Scoped } from '../scope.ts';
import type { DueEntry } from './due-entry.ts';

export async function workOutFleet(tx: Scoped, cut: Cut, vesselId?: string): Promise<DueEntry[]> {
  let vessels = tx.selectFrom('vessel').select(['id', 'name']).orderBy('id');
  if (vesselId) vessels = vessels.where('id', '=', vesselId);
  const entries: DueEntry[] = [];
  for (const vessel of await vessels.execute()) entries.push(...(await workOutVessel(tx, vessel, cut)));
  return entries;
}

async function workOutVessel(tx: Scoped, vessel: DueEntry['vessel'], cut: Cut): Promise<DueEntry[]> {
  const history = await loadVesselHistory(tx, vessel.id, cut);
  const items = await loadItemHistories(tx, vessel.id);
  return items
    .filter(({ item }) => !cut.knownAt || item.createdAt <= new Date(cut.knownAt).toISOString())
    .flatMap(({ item, history: facts }) =>
      workOutObligations(facts, history, cut).map((obligation) => toEntry(vessel, item, obligation)),
    );
}

function toEntry(vessel: DueEntry['vessel'], item: ItemWithHistory['item'], obligation: Obligation): DueEntry {
  const { id, kind, label, zone, quantity } = item;
  return { vessel, item: { id, kind, label, zone, quantity }, obligation };
}
