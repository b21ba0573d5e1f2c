/** Everything the rules need to know about a vessel's items, as values of the domain. */

import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { Cut, ItemHistory, VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import { loadOverrides } from '../rule/overrides.ts';
import { loadOwnRuleVersions } from '../rule/own-rules.ts';
import { loadUnderNotices } from '../safety-notice/under-notices.ts';
import type { Scoped } from '../scope.ts';
import { toVesselEvent } from '../vessel/events.ts';
import { toSituation } from '../vessel/situations.ts';
import { toFact, toFactRecord } from './fact-record.ts';
import { type ItemRecord, toItemRecord } from './item-record.ts';

export type ItemWithHistory = { readonly item: ItemRecord; readonly history: ItemHistory };

/**
 * Her schemes, situations and events, and the organisation's own rules: every version for a `cut`, else those
 * whose change has begun. Throws when there is no such vessel in scope: load her first.
 */
export async function loadVesselHistory(tx: Scoped, vesselId: string, cut?: Cut): Promise<VesselHistory> {
  const { schemes } = await tx
    .selectFrom('vessel')
    .select('schemes')
    .where('id', '=', vesselId)
    .executeTakeFirstOrThrow();
  const situations = await tx
    .selectFrom('situation')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('id')
    .execute();
  const events = await tx
    .selectFrom('vessel_event')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('id')
    .execute();
  return {
    id: vesselId,
    schemes: schemes as SchemeId[],
    situations: situations.map(toSituation),
    events: events.map(toVesselEvent),
    ownRules: await loadOwnRuleVersions(tx, cut ? 'every' : 'begun'),
  };
}

/** The vessel's items with all their facts, the figures set for them and the notices about them; only `itemIds` where given. */
export async function loadItemHistories(
  tx: Scoped,
  vesselId: string,
  itemIds?: readonly string[],
): Promise<ItemWithHistory[]> {
  let items = tx.selectFrom('item').selectAll().where('vessel_id', '=', vesselId).orderBy('id');
  if (itemIds) items = items.where('id', 'in', [...itemIds]);
  const rows = await items.execute();
  if (rows.length === 0) return [];
  const facts = await tx
    .selectFrom('fact')
    .selectAll()
    .where(
      'item_id',
      'in',
      rows.map(({ id }) => id),
    )
    .orderBy('id')
    .execute();
  const overrides = await loadOverrides(tx, vesselId);
  const records = rows.map(toItemRecord);
  const underNoticesOf = await loadUnderNotices(tx, records);
  const byItem = Map.groupBy(facts.map(toFactRecord), ({ itemId }) => itemId);
  return records.map((item) => {
    const underNotices = underNoticesOf(item);
    return {
      item,
      history: {
        kind: item.kind as ItemKindId,
        attributes: item.attributes,
        facts: (byItem.get(item.id) ?? []).map(toFact),
        overrides: overrides.filter(({ itemId }) => itemId === null || itemId === item.id),
        ...(underNotices && { underNotices }),
      },
    };
  });
}
