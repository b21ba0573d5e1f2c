/** What adding one thing and adding many have in common. What follows from the rows is the caller's to work out. */
import type { ItemParticulars, ItemRecord } from '@garboard/db/item/item-record.ts';
import { insertItems } from '@garboard/db/item/items.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import { audit } from '../audit.ts';
import { newId } from '../new-id.ts';
import type { Fault } from '../result.ts';
import type { Write } from '../write.ts';

export type ItemToAdd = ItemParticulars & { readonly kind: string };

export function kindFaults(kind: string, pointer: string): Fault[] {
  return findItemKind(kind) ? [] : [{ pointer, detail: 'is no kind of item in the catalogue' }];
}

export function newItemRecord(now: Date, vesselId: string, item: ItemToAdd): ItemRecord {
  return { ...item, vesselId, id: newId(now), withdrawn: false, createdAt: now.toISOString(), version: 1 };
}

/** Inserts the rows, each with its line in the audit. */
export async function putAboard(write: Write, items: readonly ItemRecord[]): Promise<void> {
  await insertItems(write.tx, write.ctx.organisationId, items);
  for (const item of items)
    audit(write, { verb: 'add_item', subject: 'item', subjectId: item.id, before: null, after: item });
}
