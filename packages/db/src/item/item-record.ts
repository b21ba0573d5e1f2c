/** An item's row as everybody past this folder sees it. */
import type { Selectable } from 'kysely';
import type { ItemTable } from './tables.ts';

export type ItemParticulars = {
  readonly label: string;
  readonly zone: string | null;
  readonly quantity: number;
  readonly maker: string | null;
  readonly model: string | null;
  readonly serialNumber: string | null;
  readonly attributes: Readonly<Record<string, string | number | boolean>>;
};

export type ItemRecord = ItemParticulars & {
  readonly id: string;
  readonly vesselId: string;
  readonly kind: string;
  readonly withdrawn: boolean;
  readonly createdAt: string;
  readonly version: number;
};

export function toItemRecord(row: Selectable<ItemTable>): ItemRecord {
  return {
    id: row.id,
    vesselId: row.vessel_id,
    kind: row.kind,
    label: row.label,
    zone: row.zone,
    quantity: row.quantity,
    maker: row.maker,
    model: row.model,
    serialNumber: row.serial_number,
    attributes: row.attributes,
    withdrawn: row.withdrawn,
    createdAt: row.created_at.toISOString(),
    version: row.version,
  };
}

export function toItemColumns(item: ItemParticulars) {
  return {
    label: item.label,
    zone: item.zone,
    quantity: item.quantity,
    maker: item.maker,
    model: item.model,
    serial_number: item.serialNumber,
    attributes: JSON.stringify(item.attributes),
  };
}
