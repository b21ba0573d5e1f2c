import type { ItemKind } from '../item-kind.ts';

const FLARE_DATES: ItemKind['dates'] = {
  manufactured: 'printed on the case as month and year',
  printed_expiry: 'printed on the case as month and year',
};

export const FLARE_KINDS: readonly ItemKind[] = [
  {
    id: 'hand_flare',
    itemClass: 'flares',
    name: 'hand flare',
    zone: 'cockpit',
    dates: FLARE_DATES,
    attributes: [],
  },
  {
    id: 'parachute_rocket_flare',
    itemClass: 'flares',
    name: 'parachute rocket flare',
    zone: 'cockpit',
    dates: FLARE_DATES,
    attributes: [],
  },
  {
    id: 'buoyant_smoke',
    itemClass: 'flares',
    name: 'buoyant smoke signal',
    zone: 'cockpit',
    dates: FLARE_DATES,
    attributes: [],
  },
  {
    id: 'electronic_visual_distress_signal',
    itemClass: 'flares',
    name: 'electronic visual distress signal',
    zone: 'cockpit',
    dates: { serviced: 'the note made when the battery was changed' },
    attributes: [],
  },
];
