/** What stands on the plate of some things, by invented makers: enough for a maker's notice to find something. */
import { chanceOf, type Logbook } from '../logbook.ts';
import type { ItemPlan } from '../plan.ts';

export const HOSE_MAKER = 'Quillmere Hose Works';
export const EXTINGUISHER_MAKER = 'Emberlock Fire Appliances';

/** A third of the gas hoses was never looked at closely; powder extinguishers come from two makers. */
export function withPlate(log: Logbook, item: ItemPlan): ItemPlan {
  const random = chanceOf(log, `plate of ${item.label}`);
  if (item.kind === 'gas_hose') {
    const serialNumber = random.between(1, 3) === 1 ? null : `QH ${random.between(1100, 1600)}`;
    return { ...item, maker: HOSE_MAKER, serialNumber };
  }
  if (item.kind !== 'portable_extinguisher_dry_powder') return item;
  return { ...item, maker: random.between(1, 2) === 1 ? EXTINGUISHER_MAKER : 'Tarnbeck Extinguishers' };
}
