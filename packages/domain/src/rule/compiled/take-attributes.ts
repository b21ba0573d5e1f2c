/** What the item's attributes say, each in its place; what the item before it said is taken away again. */
import type { Aboard } from './aboard.ts';
import { NO_DAY, NONE } from './codes.ts';

export function takeAttributes(item: number, aboard: Aboard): void {
  const { item: items, attributes } = aboard.columns;
  const to = items.attributesFrom[item + 1] as number;
  for (let row = items.attributesFrom[item] as number; row < to; row++) {
    const at = attributes.attribute[row] as number;
    aboard.value[at] = attributes.value[row] as number;
    aboard.whole[at] = attributes.whole[row] as number;
    aboard.dateFirst[at] = attributes.first[row] as number;
    aboard.dateLast[at] = attributes.last[row] as number;
  }
}

export function clearAttributes(item: number, aboard: Aboard): void {
  const { item: items, attributes } = aboard.columns;
  const to = items.attributesFrom[item + 1] as number;
  for (let row = items.attributesFrom[item] as number; row < to; row++) {
    const at = attributes.attribute[row] as number;
    aboard.value[at] = NONE;
    aboard.whole[at] = 0;
    aboard.dateFirst[at] = NO_DAY;
    aboard.dateLast[at] = NO_DAY;
  }
}
