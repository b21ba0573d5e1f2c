import type { ItemKind } from '../item-kind.ts';

const CERTIFICATE = 'the service certificate, or the label on the container';

export const LIFERAFT_KINDS: readonly ItemKind[] = [
  {
    id: 'liferaft',
    itemClass: 'liferaft',
    name: 'inflatable liferaft',
    zone: 'on deck',
    dates: {
      manufactured: 'the plate on the container and the service certificate',
      printed_expiry: 'the label on the container',
      installed: 'the invoice, or the log book',
      serviced: `${CERTIFICATE}; for a new raft, the day it was packed`,
      tested: 'the list of tests on the service certificate',
      inspected: "the log book, or the inspector's report",
    },
    attributes: [
      'standard',
      'extendedInterval',
      'makerIntervalMonths',
      'packedContentsExpireOn',
      'conventionShip',
      'seasonMonths',
      'operatesOnlyMonthsMeanDailyMinAbove0C',
      'cylinderTestValidTo',
      'dryStoredOffSeason',
    ],
  },
  {
    id: 'liferaft_packed_contents',
    itemClass: 'liferaft',
    name: 'dated contents packed in a liferaft',
    zone: 'on deck',
    dates: { printed_expiry: 'the list of contents on the last service certificate' },
    attributes: [],
  },
];
