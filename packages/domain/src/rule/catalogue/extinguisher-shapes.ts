/** What the extinguisher rules share: which kinds are meant, who is competent, what a test resets. */
import type { Capacity } from '../../item/fact.ts';
import type { ItemKindId } from '../../item/item-kind.ts';
import type { Interval, Limit, Reset } from '../rule.ts';

export const DRY_POWDER: readonly ItemKindId[] = ['portable_extinguisher_dry_powder'];
export const CO2: readonly ItemKindId[] = ['portable_extinguisher_co2'];
export const LIQUID: readonly ItemKindId[] = [
  'portable_extinguisher_foam',
  'portable_extinguisher_water',
  'portable_extinguisher_wet_chemical',
];
export const DISPOSABLE: readonly ItemKindId[] = ['portable_extinguisher_dry_powder_disposable'];
export const REFILLABLE: readonly ItemKindId[] = [...DRY_POWDER, ...CO2, ...LIQUID];
export const PORTABLE: readonly ItemKindId[] = [...REFILLABLE, ...DISPOSABLE];

export const COMPETENT: readonly Capacity[] = ['competent_person', 'fire_equipment_technician'];
export const TECHNICIAN: readonly Capacity[] = ['fire_equipment_technician'];

/** Our reading where a clause counts from the last test and none is on record. */
export function sinceMade(plus: Interval, test: string): Extract<Limit, { kind: 'after' }> {
  return {
    kind: 'after',
    from: 'manufactured',
    plus,
    reading: `no ${test} is on record, so the first is counted from manufacture`,
  };
}

export function hydrostaticBy(by: readonly Capacity[]): readonly Reset[] {
  return [
    { act: 'tested', tests: ['hydrostatic'], by },
    { act: 'serviced', tests: ['hydrostatic'], by },
  ];
}
