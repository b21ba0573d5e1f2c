import type { ItemKind } from '../item-kind.ts';

export const GROUND_TACKLE_KINDS: readonly ItemKind[] = [
  {
    id: 'anchor_chain',
    itemClass: 'ground_tackle',
    name: 'anchor chain with its shackles and connectors',
    zone: 'anchor locker',
    dates: {
      installed: "the invoice, or the chain's test certificate",
      inspected: "the log book, or the surveyor's report",
    },
    attributes: [],
  },
];
