import type { ItemKind } from '../item-kind.ts';

const BEACON_DATES: ItemKind['dates'] = {
  manufactured: 'the plate on the beacon',
  printed_expiry: 'the label at the battery',
  installed: 'the invoice, or the log book',
  tested: 'the radio log or the log book',
  inspected: "the registry's confirmation",
  serviced: "the report of whoever opened it: the maker's agent or the shore-based maintenance provider",
  activated: 'the radio log or the log book',
};

export const BEACON_KINDS: readonly ItemKind[] = [
  {
    id: 'epirb',
    itemClass: 'beacons',
    name: 'emergency beacon (EPIRB)',
    zone: 'cockpit',
    dates: BEACON_DATES,
    attributes: ['anniversaryDate', 'passengerShip', 'registrationMonths'],
  },
  {
    id: 'search_and_rescue_transponder',
    itemClass: 'beacons',
    name: 'search and rescue transponder (SART or AIS-SART)',
    zone: 'saloon',
    dates: BEACON_DATES,
    attributes: [],
  },
  {
    id: 'personal_locator_beacon',
    itemClass: 'beacons',
    name: 'personal locator beacon (PLB)',
    zone: 'saloon',
    dates: BEACON_DATES,
    attributes: [],
  },
];
