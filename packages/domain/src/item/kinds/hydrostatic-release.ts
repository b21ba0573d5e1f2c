import type { ItemKind } from '../item-kind.ts';

export const HYDROSTATIC_RELEASE_KINDS: readonly ItemKind[] = [
  {
    id: 'hydrostatic_release_serviceable',
    itemClass: 'hydrostatic_release',
    name: 'hydrostatic release, serviceable',
    zone: 'on deck',
    dates: {
      manufactured: 'stamped on the body',
      installed: 'the invoice, or the log book',
      serviced: "the station's plate or certificate",
    },
    attributes: [],
  },
  {
    id: 'hydrostatic_release_disposable',
    itemClass: 'hydrostatic_release',
    name: 'hydrostatic release, disposable',
    zone: 'on deck',
    dates: {
      manufactured: 'printed on the label as month and year',
      printed_expiry: 'marked on the label by whoever fitted it',
      installed: 'marked on the label by whoever fitted it, or the log book',
    },
    attributes: ['makerLifeMonths'],
  },
];
