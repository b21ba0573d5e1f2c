import type { ItemKind } from '../item-kind.ts';

const CRAFT_DATES: ItemKind['dates'] = {
  manufactured: 'the plate on it',
  installed: "the yard's invoice, or the log book",
  inspected: 'the log book',
  tested: 'the log book',
};

export const SURVIVAL_EQUIPMENT_KINDS: readonly ItemKind[] = [
  {
    id: 'rescue_boat',
    itemClass: 'safety_on_deck',
    name: 'rescue boat',
    zone: 'on deck',
    dates: CRAFT_DATES,
    attributes: [],
  },
  {
    id: 'launching_appliance',
    itemClass: 'safety_on_deck',
    name: 'launching appliance',
    zone: 'on deck',
    dates: CRAFT_DATES,
    attributes: [],
  },
  {
    id: 'survival_equipment_battery',
    itemClass: 'safety_on_deck',
    name: 'battery of survival equipment',
    zone: 'on deck',
    dates: {
      printed_expiry: "the label on the battery, or the maker's record against its serial number",
      installed: 'the log book',
      inspected: 'the log book',
    },
    attributes: [],
  },
];
