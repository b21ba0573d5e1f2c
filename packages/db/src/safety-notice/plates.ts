/** What is written of the things' plates, and what was written before. */
import type { FormerPlate, Plate, PlateHistory } from '@garboard/domain/safety-notice/plate.ts';
import type { Selectable } from 'kysely';
import type { ItemRecord } from '../item/item-record.ts';
import type { Scoped } from '../scope.ts';
import { dayOrNull, textOrNull } from './notice-record.ts';
import type { FormerPlateTable } from './tables.ts';

export type FormerPlateRow = FormerPlate & { readonly id: string; readonly itemId: string; readonly vesselId: string };

export async function loadFormerPlates(tx: Scoped, itemIds: readonly string[]): Promise<FormerPlateRow[]> {
  const rows = await tx
    .selectFrom('former_plate')
    .selectAll()
    .where('item_id', 'in', [...itemIds])
    .orderBy('id')
    .execute();
  return rows.map(toFormerPlate);
}

export async function insertFormerPlate(tx: Scoped, organisationId: string, former: FormerPlateRow): Promise<void> {
  const { plate, replacedOn } = former;
  await tx
    .insertInto('former_plate')
    .values({
      organisation_id: organisationId,
      id: former.id,
      item_id: former.itemId,
      vessel_id: former.vesselId,
      maker: plate.maker,
      model: plate.model,
      serial_number: plate.serialNumber,
      quantity: plate.quantity,
      replaced_on: textOrNull(replacedOn),
      written_over_at: former.until,
    })
    .execute();
}

function toFormerPlate(row: Selectable<FormerPlateTable>): FormerPlateRow {
  return {
    id: row.id,
    itemId: row.item_id,
    vesselId: row.vessel_id,
    plate: { maker: row.maker, model: row.model, serialNumber: row.serial_number, quantity: row.quantity },
    until: row.written_over_at.toISOString(),
    replacedOn: dayOrNull(row.replaced_on),
  };
}

export const plateOf = ({ maker, model, serialNumber, quantity }: Plate): Plate => ({
  maker,
  model,
  serialNumber,
  quantity,
});

export function plateHistory(item: ItemRecord, former: readonly FormerPlateRow[]): PlateHistory {
  return {
    current: plateOf(item),
    addedAt: item.createdAt,
    former: former.filter(({ itemId }) => itemId === item.id),
  };
}
