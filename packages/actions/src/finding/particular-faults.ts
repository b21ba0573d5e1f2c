/** What is written of a finding, held against the vessel and the catalogue. */
import { loadItem } from '@garboard/db/item/items.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { isPlace } from '@garboard/db/survey-visit/routes.ts';
import type { Particulars } from '@garboard/domain/finding/entry.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';
import type { Fault } from '../result.ts';

export async function particularFaults(tx: Scoped, vesselId: string, said: Partial<Particulars>): Promise<Fault[]> {
  const { zone, itemId, ruleId } = said;
  return [
    ...(zone !== undefined && !(await isPlace(tx, zone))
      ? [{ pointer: '/zone', detail: 'is no place of the route' }]
      : []),
    ...(itemId && !(await isAboard(tx, vesselId, itemId))
      ? [{ pointer: '/itemId', detail: 'is nothing aboard of her' }]
      : []),
    ...(ruleId && !findRule(ruleId) ? [{ pointer: '/ruleId', detail: 'is no rule of the catalogue' }] : []),
  ];
}

async function isAboard(tx: Scoped, vesselId: string, itemId: string): Promise<boolean> {
  return (await loadItem(tx, itemId))?.vesselId === vesselId;
}
