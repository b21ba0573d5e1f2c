import type { ItemKind } from '../item-kind.ts';

const ENGINE_DATES: ItemKind['dates'] = {
  installed: "the engineer's invoice, or the engine log",
  inspected: "the engineer's report, or the engine log",
};

export const ENGINE_KINDS: readonly ItemKind[] = [
  {
    id: 'engine',
    itemClass: 'engine',
    name: 'engine, with its oil, coolant, belts and raw-water pump',
    zone: 'engine space',
    dates: {
      ...ENGINE_DATES,
      serviced: "the engineer's invoice, or the engine log",
      meter: 'the hour meter at the engine panel',
    },
    attributes: [
      'oilChangeHours',
      'impellerHours',
      'coolantIntervalMonths',
      'coolantHours',
      'beltInspectionHours',
      'beltLifeMonths',
      'beltHours',
    ],
  },
  {
    id: 'engine_anode',
    itemClass: 'engine',
    name: 'anode in the engine or heat exchanger',
    zone: 'engine space',
    dates: ENGINE_DATES,
    attributes: ['makerIntervalMonths'],
  },
  {
    id: 'saildrive_seal',
    itemClass: 'engine',
    name: "saildrive's hull seal (diaphragm)",
    zone: 'engine space',
    dates: { ...ENGINE_DATES, manufactured: 'cast in the rubber of the seal' },
    attributes: ['makerIntervalMonths', 'makerLifeMonths'],
  },
];
