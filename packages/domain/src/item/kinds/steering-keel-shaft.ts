import type { ItemKind } from '../item-kind.ts';

const UNDERWATER_DATES: ItemKind['dates'] = {
  installed: "the yard's invoice; for the first ones, the builder's file",
  inspected: "the surveyor's, engineer's or yard's report",
};

export const STEERING_KEEL_SHAFT_KINDS: readonly ItemKind[] = [
  {
    id: 'keel_and_rudder',
    itemClass: 'steering_keel_shaft',
    name: 'structure of keel and rudder',
    zone: 'keel and rudder',
    dates: { inspected: "the surveyor's or yard's report of the structural inspection" },
    attributes: [],
  },
  {
    id: 'steering_gear',
    itemClass: 'steering_keel_shaft',
    name: 'steering gear: quadrant, chain or hydraulics',
    zone: 'cockpit',
    dates: UNDERWATER_DATES,
    attributes: [],
  },
  {
    id: 'steering_cable',
    itemClass: 'steering_keel_shaft',
    name: 'steering cable',
    zone: 'cockpit',
    dates: UNDERWATER_DATES,
    attributes: ['makerLifeMonths'],
  },
  {
    id: 'keel_bolts',
    itemClass: 'steering_keel_shaft',
    name: 'keel bolts',
    zone: 'keel and rudder',
    dates: { ...UNDERWATER_DATES, tested: "the surveyor's report of the bolts drawn" },
    attributes: ['makerIntervalMonths'],
  },
  {
    id: 'rudder_bearings',
    itemClass: 'steering_keel_shaft',
    name: 'rudder bearings and stock',
    zone: 'keel and rudder',
    dates: UNDERWATER_DATES,
    attributes: [],
  },
  {
    id: 'propeller_shaft',
    itemClass: 'steering_keel_shaft',
    name: 'propeller shaft, stern gland and cutless bearing',
    zone: 'keel and rudder',
    dates: { ...UNDERWATER_DATES, serviced: "the engineer's invoice, or the engine log" },
    attributes: [],
  },
  {
    id: 'shaft_seal',
    itemClass: 'steering_keel_shaft',
    name: 'shaft seal, lip or face, with its bellows',
    zone: 'engine space',
    dates: { ...UNDERWATER_DATES, serviced: "the engineer's invoice, or the engine log" },
    attributes: ['makerLifeMonths'],
  },
];
