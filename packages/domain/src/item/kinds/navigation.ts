import type { ItemKind } from '../item-kind.ts';

export const NAVIGATION_KINDS: readonly ItemKind[] = [
  {
    id: 'steering_compass',
    itemClass: 'navigation',
    name: 'steering compass',
    zone: 'cockpit',
    dates: { installed: 'the invoice, or the log book', tested: 'the deviation card' },
    attributes: [],
  },
];
