import type { ItemKind } from '../item-kind.ts';

const HOSE_DATES: ItemKind['dates'] = {
  manufactured: 'printed along the hose',
  installed: "the fitter's invoice, or a label left on the hose",
};

export const HOSE_KINDS: readonly ItemKind[] = [
  {
    id: 'gas_hose',
    itemClass: 'hoses',
    name: 'gas (LPG) hose',
    zone: 'gas locker',
    dates: {
      ...HOSE_DATES,
      printed_expiry: 'printed along some hoses as a replace-by date',
      installed: "the gas engineer's invoice or certificate",
    },
    attributes: ['hoseLifeCountsFrom'],
  },
  {
    id: 'gas_regulator',
    itemClass: 'hoses',
    name: 'gas (LPG) regulator',
    zone: 'gas locker',
    dates: {
      manufactured: 'stamped or printed on the body',
      installed: "the gas engineer's invoice or certificate",
    },
    attributes: [],
  },
  {
    id: 'fuel_hose',
    itemClass: 'hoses',
    name: 'fuel hose',
    zone: 'engine space',
    dates: { ...HOSE_DATES, inspected: "the engineer's report" },
    attributes: [],
  },
  {
    id: 'seawater_hose',
    itemClass: 'hoses',
    name: 'seawater hose below the waterline',
    zone: 'bilge and skin fittings',
    dates: HOSE_DATES,
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'wet_exhaust_hose',
    itemClass: 'hoses',
    name: 'wet exhaust hose',
    zone: 'engine space',
    dates: { ...HOSE_DATES, inspected: "the engineer's report" },
    attributes: [],
  },
];
