import type { ItemKind } from '../item-kind.ts';

const PAINT_DATES: ItemKind['dates'] = {
  installed: "the yard's invoice, or the log book",
  inspected: "the yard's report, or the log book",
};

export const HULL_KINDS: readonly ItemKind[] = [
  {
    id: 'hull',
    itemClass: 'hull',
    name: 'hull, as it is examined out of the water',
    zone: 'topsides',
    dates: {
      manufactured: "the builder's plate, or the hull identification number",
      inspected: "the surveyor's report or the inspector's record",
    },
    attributes: ['saltWaterOverThreeMonths', 'insurerFirstSurveyMonths', 'insurerIntervalMonths'],
  },
  {
    id: 'antifouling',
    itemClass: 'hull',
    name: 'antifouling',
    zone: 'bottom',
    dates: PAINT_DATES,
    attributes: ['multiSeason'],
  },
  {
    id: 'hull_anode',
    itemClass: 'hull',
    name: 'hull anode',
    zone: 'bottom',
    dates: PAINT_DATES,
    attributes: [],
  },
];
