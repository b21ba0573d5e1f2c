import type { ItemKind } from '../item-kind.ts';

const ALARM_DATES: ItemKind['dates'] = {
  manufactured: 'the label on the back',
  printed_expiry: 'the replace-by date on the label, on the front or the back',
  installed: 'the invoice, or a date written on the back',
  tested: 'the log book',
};

export const GAS_KINDS: readonly ItemKind[] = [
  {
    id: 'gas_installation',
    itemClass: 'gas',
    name: 'gas (LPG) installation as a whole',
    zone: 'gas locker',
    dates: {
      installed: "the gas engineer's invoice or certificate",
      overhauled: "the gas engineer's invoice for work on the installation",
      tested: "the gas engineer's test certificate",
      inspected: "the expert's attestation",
    },
    attributes: [],
  },
  {
    id: 'gas_detector',
    itemClass: 'gas',
    name: 'gas (LPG) detector',
    zone: 'saloon',
    dates: ALARM_DATES,
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'carbon_monoxide_alarm',
    itemClass: 'gas',
    name: 'carbon monoxide alarm',
    zone: 'saloon',
    dates: ALARM_DATES,
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'gas_locker_drain',
    itemClass: 'gas',
    name: 'gas locker drain and its hose',
    zone: 'gas locker',
    dates: {
      installed: "the fitter's invoice",
      tested: "the log book, or the gas engineer's report",
      inspected: "the examiner's report",
    },
    attributes: [],
  },
];
