/** The portable extinguishers of the vessels kept under SOLAS, as they stand at a cut: of each some must be discharged. */
import { dateOnRecord } from '@garboard/domain/item/date-on-record.ts';
import { DISCHARGED_KINDS, type Sampled } from '@garboard/domain/item/fleet-sample.ts';
import { unitAboard } from '@garboard/domain/item/unit-aboard.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';
import { sql } from 'kysely';
import { type ItemWithHistory, loadItemHistories } from '../item/load-histories.ts';
import type { Scoped } from '../scope.ts';

export type SampledVessel = {
  readonly vessel: { readonly id: string; readonly name: string };
  readonly labels: ReadonlyMap<string, string>;
  readonly sampled: readonly Sampled[];
};

/** By name; costs those vessels' extinguishers, not the fleet. */
export async function readSampled(tx: Scoped, cut: Cut): Promise<SampledVessel[]> {
  const rows = await tx
    .selectFrom('item as i')
    .innerJoin('vessel as v', (join) =>
      join.onRef('v.organisation_id', '=', 'i.organisation_id').onRef('v.id', '=', 'i.vessel_id'),
    )
    .select(['v.id', 'v.name', 'i.id as item_id'])
    .where('i.kind', 'in', [...DISCHARGED_KINDS])
    .where(sql<boolean>`'solas' = any (v.schemes)`)
    .orderBy('v.name')
    .orderBy('v.id')
    .execute();
  const found: SampledVessel[] = [];
  for (const [id, hers] of Map.groupBy(rows, (row) => row.id)) {
    const items = await loadItemHistories(
      tx,
      id,
      hers.map((row) => row.item_id),
    );
    found.push({
      vessel: { id, name: hers[0]?.name ?? '' },
      labels: new Map(items.map(({ item }) => [item.id, item.label])),
      sampled: items.flatMap((each) => asSampled(each, cut)),
    });
  }
  return found;
}

/** Nothing of what is not aboard. */
function asSampled({ item, history }: ItemWithHistory, cut: Cut): readonly Sampled[] {
  const unit = unitAboard(history.facts, cut);
  if (unit.kind !== 'aboard') return [];
  const made = dateOnRecord(unit.facts, ['manufactured'])?.fact.on.first ?? null;
  return [{ itemId: item.id, kind: history.kind, made, facts: unit.facts }];
}
