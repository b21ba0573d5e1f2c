import type { ItemKind } from '../item-kind.ts';

const SAFETY_DATES: ItemKind['dates'] = {
  manufactured: 'the label sewn in or stuck on',
  installed: 'the invoice, or the log book',
  inspected: 'the log book',
};

export const SAFETY_ON_DECK_KINDS: readonly ItemKind[] = [
  {
    id: 'man_overboard_recovery_gear',
    itemClass: 'safety_on_deck',
    name: 'man-overboard recovery gear',
    zone: 'on deck',
    dates: SAFETY_DATES,
    attributes: [],
  },
  {
    id: 'throwing_line',
    itemClass: 'safety_on_deck',
    name: 'throwing line',
    zone: 'cockpit',
    dates: SAFETY_DATES,
    attributes: [],
  },
  {
    id: 'danbuoy',
    itemClass: 'safety_on_deck',
    name: 'danbuoy',
    zone: 'on deck',
    dates: SAFETY_DATES,
    attributes: [],
  },
  {
    id: 'lifebuoy_light',
    itemClass: 'safety_on_deck',
    name: 'light of a lifebuoy or danbuoy',
    zone: 'on deck',
    dates: { ...SAFETY_DATES, printed_expiry: 'the label at the battery', tested: 'the log book' },
    attributes: [],
  },
  {
    id: 'webbing_jackstay',
    itemClass: 'safety_on_deck',
    name: 'webbing jackstay',
    zone: 'deck',
    dates: SAFETY_DATES,
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'safety_harness',
    itemClass: 'safety_on_deck',
    name: 'safety harness and tether',
    zone: 'saloon',
    dates: SAFETY_DATES,
    attributes: [],
  },
];
