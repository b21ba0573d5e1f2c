/** Puts a thing aboard on the vessel's list. Its obligations stand from the start, undated until facts come. */

import type { ItemParticulars, ItemRecord } from '@garboard/db/item/item-record.ts';
import { insertItem } from '@garboard/db/item/items.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused } from '../result.ts';
import { write } from '../write.ts';
import { refreshObligations } from './refresh-obligations.ts';

export type NewItem = ItemParticulars & { readonly vesselId: string; readonly kind: string };
export type ItemAdded = { readonly item: ItemRecord; readonly obligations: readonly Obligation[] };

export function addItem(ctx: ActionContext, input: NewItem): Promise<Result<ItemAdded>> {
  return write(ctx, 'keep_register', async (write) => {
    const vessel = await lockVessel(write.tx, input.vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    if (!findItemKind(input.kind)) {
      return refused({
        kind: 'invalid',
        errors: [{ pointer: '/kind', detail: 'is no kind of item in the catalogue' }],
      });
    }
    const item = { ...input, id: newId(ctx.now), withdrawn: false, createdAt: ctx.now.toISOString(), version: 1 };
    await insertItem(write.tx, ctx.organisationId, item);
    await audit(write, { verb: 'add_item', subject: 'item', subjectId: item.id, before: null, after: item });
    const { obligations } = await refreshObligations(write.tx, ctx.organisationId, item.vesselId, [item.id]);
    return done({ item, obligations: obligations.get(item.id) ?? [] });
  });
}
