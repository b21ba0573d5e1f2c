import type { ItemKind } from '../item-kind.ts';

export const SEACOCK_KINDS: readonly ItemKind[] = [
  {
    id: 'seacock',
    itemClass: 'seacocks',
    name: 'seacock or skin fitting, with its hose tail and clips',
    zone: 'bilge and skin fittings',
    dates: {
      installed: "the yard's invoice; for the first ones, the builder's file",
      inspected: "the surveyor's or yard's report",
      tested: 'the log book',
    },
    attributes: ['fittingMaterial'],
  },
];
