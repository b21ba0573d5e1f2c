/** Changes what is written of an item, and keeps what its plate was written down as before. */
import type { ItemParticulars, ItemRecord } from '@garboard/db/item/item-record.ts';
import { updateItem } from '@garboard/db/item/items.ts';
import { insertFormerPlate, plateOf } from '@garboard/db/safety-notice/plates.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import { isOtherPlate } from '@garboard/domain/safety-notice/plate.ts';
import { newId } from '../new-id.ts';
import type { Write } from '../write.ts';

/** `replacedOn`: the day on which another unit came, where that is why. `null`: somebody was faster. */
export async function writeItem(
  { tx, ctx }: Write,
  before: ItemRecord,
  particulars: ItemParticulars,
  replacedOn: Day | null,
): Promise<ItemRecord | null> {
  const after = await updateItem(tx, before.id, before.version, particulars);
  if (after && isOtherPlate(before, after)) {
    const { id: itemId, vesselId } = before;
    const former = { plate: plateOf(before), until: ctx.now.toISOString(), replacedOn };
    await insertFormerPlate(tx, ctx.organisationId, { ...former, id: newId(ctx.now), itemId, vesselId });
  }
  return after;
}
