import type { ItemKind } from '../item-kind.ts';

export const FIRST_AID_KINDS: readonly ItemKind[] = [
  {
    id: 'first_aid_kit',
    itemClass: 'first_aid',
    name: 'first-aid kit',
    zone: 'saloon',
    dates: { installed: 'the invoice, or the log book', inspected: 'the list in the lid, or the log book' },
    attributes: ['contentsExpireOn'],
  },
];
