/** Items put together that the same rules bear on in the same way: of one kind, under the same schemes, and plain. */
import { ITEM_KIND_IDS } from '../../item/item-kind.ts';
import type { Aboard } from './aboard.ts';
import { isWholeHistory } from './take-aboard.ts';

export type Groups = {
  /** Item numbers, group after group; the last are those to be taken one by one. */
  readonly items: Int32Array;
  /** Where each begins, and the end of the last: `schemes × kinds + kind`, then the single ones. */
  readonly from: Int32Array;
  /** The sets of schemes, as bits. */
  readonly schemes: readonly number[];
};

export const KINDS = ITEM_KIND_IDS.length;

export function inGroups(aboard: Aboard): Groups {
  const { columns } = aboard;
  const sets = new Map<number, number>();
  const group = new Int32Array(columns.items);
  const setOfVessel = new Int32Array(columns.vessels);
  for (let vessel = 0; vessel < columns.vessels; vessel++) {
    const bits = columns.vessel.schemes[vessel] as number;
    const set = sets.get(bits) ?? sets.size;
    sets.set(bits, set);
    setOfVessel[vessel] = set;
  }
  const singles = sets.size * KINDS;
  const from = new Int32Array(singles + 2);
  for (let item = 0; item < columns.items; item++) {
    const set = setOfVessel[columns.item.vessel[item] as number] as number;
    const at = isPlain(item, aboard) ? set * KINDS + (columns.item.kind[item] as number) : singles;
    group[item] = at;
    from[at + 1] = (from[at + 1] as number) + 1;
  }
  for (let at = 1; at < from.length; at++) from[at] = (from[at] as number) + (from[at - 1] as number);
  return { items: placed(group, from), from, schemes: [...sets.keys()] };
}

/** Nothing beside its facts bears on it, and no fact needs to be sorted out. */
function isPlain(item: number, aboard: Aboard): boolean {
  const { attributesFrom, overridesFrom } = aboard.columns.item;
  return (
    attributesFrom[item] === attributesFrom[item + 1] &&
    overridesFrom[item] === overridesFrom[item + 1] &&
    isWholeHistory(item, aboard)
  );
}

function placed(group: Int32Array, from: Int32Array): Int32Array {
  const items = new Int32Array(group.length);
  const next = from.slice();
  for (let item = 0; item < group.length; item++) {
    const at = group[item] as number;
    items[next[at] as number] = item;
    next[at] = (next[at] as number) + 1;
  }
  return items;
}
