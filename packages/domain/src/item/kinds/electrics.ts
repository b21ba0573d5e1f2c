import type { ItemKind } from '../item-kind.ts';

const ELECTRIC_DATES: ItemKind['dates'] = {
  installed: 'the invoice, or a date written on it',
  tested: "the log book, or the electrician's report",
};

export const ELECTRIC_KINDS: readonly ItemKind[] = [
  {
    id: 'battery',
    itemClass: 'electrics',
    name: 'battery',
    zone: 'engine space',
    dates: { ...ELECTRIC_DATES, manufactured: 'the code stamped on the case or a terminal' },
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'bilge_pump',
    itemClass: 'electrics',
    name: 'bilge pump',
    zone: 'bilge and skin fittings',
    dates: ELECTRIC_DATES,
    attributes: [],
  },
  {
    id: 'bilge_alarm',
    itemClass: 'electrics',
    name: 'bilge alarm',
    zone: 'bilge and skin fittings',
    dates: ELECTRIC_DATES,
    attributes: [],
  },
  {
    id: 'navigation_lights',
    itemClass: 'electrics',
    name: 'navigation lights',
    zone: 'deck',
    dates: ELECTRIC_DATES,
    attributes: [],
  },
];
