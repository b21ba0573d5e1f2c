/** Changes what is written of an item. Its attributes, maker, model and serial number can change its obligations. */
import type { ItemParticulars, ItemRecord } from '@garboard/db/item/item-record.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { refreshObligations } from './refresh-obligations.ts';
import { writeItem } from './write-item.ts';

export type ItemChange = {
  readonly itemId: string;
  readonly expectedVersion: number;
  /** What is absent stays; `null` takes it away. */
  readonly change: Partial<ItemParticulars>;
};

export function changeItem(
  ctx: ActionContext,
  { itemId, expectedVersion, change }: ItemChange,
): Promise<Written<ItemRecord, 'not_found' | 'stale'>> {
  return write(ctx, 'keep_register', async (write) => {
    const found = await loadItem(write.tx, itemId);
    if (!found) return refused({ kind: 'not_found' });
    await lockVessel(write.tx, found.vesselId);
    const before = (await loadItem(write.tx, itemId)) ?? found;
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    const after = await writeItem(write, before, { ...before, ...change }, null);
    if (!after) return refused({ kind: 'stale', version: before.version });
    audit(write, { verb: 'change_item', subject: 'item', subjectId: itemId, before, after });
    await refreshObligations(write.tx, ctx.organisationId, after.vesselId, [itemId]);
    return done(after);
  });
}
