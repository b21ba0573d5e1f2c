/** Puts a thing aboard on the vessel's list. Its obligations stand from the start, undated until facts come. */

import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { type ItemToAdd, kindFaults, newItemRecord, putAboard } from './put-aboard.ts';
import { refreshObligations } from './refresh-obligations.ts';

export type NewItem = ItemToAdd & { readonly vesselId: string };
export type ItemAdded = { readonly item: ItemRecord; readonly obligations: readonly Obligation[] };

export function addItem(
  ctx: ActionContext,
  { vesselId, ...input }: NewItem,
): Promise<Written<ItemAdded, 'not_found' | 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    const vessel = await lockVessel(write.tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const errors = kindFaults(input.kind, '/kind');
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const item = newItemRecord(ctx.now, vesselId, input);
    await putAboard(write, [item]);
    const { obligations } = await refreshObligations(write.tx, ctx.organisationId, vesselId, [item.id]);
    return done({ item, obligations: obligations.get(item.id) ?? [] });
  });
}
