/**
 * Puts things aboard on the vessel's list, all of them or none. Their obligations stand from the start,
 * undated until facts come.
 */
import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { type ItemToAdd, kindFaults, newItemRecord, putAboard } from './put-aboard.ts';
import { refreshObligations } from './refresh-obligations.ts';

export type NewItems = { readonly vesselId: string; readonly items: readonly ItemToAdd[] };

/** In the order given; at least one. A fault points at its row: `/items/3/kind`. */
export function addItems(
  ctx: ActionContext,
  { vesselId, items }: NewItems,
): Promise<Written<readonly ItemRecord[], 'not_found' | 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    const vessel = await lockVessel(write.tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const errors = items.flatMap(({ kind }, row) => kindFaults(kind, `/items/${row}/kind`));
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const added = items.map((item) => newItemRecord(ctx.now, vesselId, item));
    await putAboard(write, added);
    const ids = added.map(({ id }) => id);
    await refreshObligations(write.tx, ctx.organisationId, vesselId, ids);
    return done(added);
  });
}
