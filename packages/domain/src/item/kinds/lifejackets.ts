import type { ItemKind } from '../item-kind.ts';

const LIFEJACKET_DATES: ItemKind['dates'] = {
  manufactured: 'the label inside the jacket',
  installed: 'the invoice, or the log book',
  inspected: 'the log book, or the card kept with the jacket',
  tested: 'the log book, or the card kept with the jacket',
};

const PART_DATES: ItemKind['dates'] = {
  manufactured: 'stamped or printed on it',
  installed: "the jacket's service label, or the log book",
  inspected: 'the log book, or the card kept with the jacket',
};

export const LIFEJACKET_KINDS: readonly ItemKind[] = [
  {
    id: 'inflatable_lifejacket',
    itemClass: 'lifejackets',
    name: 'inflatable lifejacket',
    zone: 'saloon',
    dates: {
      ...LIFEJACKET_DATES,
      serviced: "the station's label in the jacket, or its certificate",
      printed_expiry: 'the label inside the jacket, where its maker prints one',
    },
    attributes: ['makerIntervalMonths', 'makerLifeMonths', 'solasApproved'],
  },
  {
    id: 'foam_lifejacket',
    itemClass: 'lifejackets',
    name: 'foam lifejacket',
    zone: 'saloon',
    dates: LIFEJACKET_DATES,
    attributes: ['makerIntervalMonths'],
  },
  {
    id: 'lifejacket_firing_head',
    itemClass: 'lifejackets',
    name: "lifejacket's firing head: dissolving cartridge or hydrostatic head",
    zone: 'saloon',
    dates: { ...PART_DATES, printed_expiry: 'printed on the cartridge or head as month and year' },
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'lifejacket_gas_cylinder',
    itemClass: 'lifejackets',
    name: "lifejacket's gas cylinder",
    zone: 'saloon',
    dates: { ...PART_DATES, tested: 'the log book; the lowest weight allowed is stamped on the cylinder' },
    attributes: ['seasonMonths'],
  },
];
