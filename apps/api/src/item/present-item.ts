/** An item's record as the API shows it. */
import type { Item } from '@garboard/contract/item/item.ts';
import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentItem(item: ItemRecord): Item {
  return withoutNulls({
    id: item.id,
    vesselId: item.vesselId,
    kind: item.kind,
    label: item.label,
    zone: item.zone,
    quantity: item.quantity,
    maker: item.maker,
    model: item.model,
    serialNumber: item.serialNumber,
    attributes: inOneOrder(item.attributes),
    withdrawn: item.withdrawn,
    createdAt: item.createdAt,
    version: item.version,
  });
}

/** By name, however they came, so that a repeated answer is the same to the byte. */
function inOneOrder(attributes: ItemRecord['attributes']): Item['attributes'] {
  return Object.fromEntries(Object.entries(attributes).sort(([a], [b]) => (a < b ? -1 : 1)));
}
