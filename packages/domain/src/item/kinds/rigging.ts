import type { ItemKind } from '../item-kind.ts';

const RIG_DATES: ItemKind['dates'] = {
  installed: "the rigger's invoice for the re-rig; for a first rig, the builder's file",
  inspected: "the rigger's or surveyor's report",
};

export const RIGGING_KINDS: readonly ItemKind[] = [
  {
    id: 'standing_rigging_wire',
    itemClass: 'rigging',
    name: 'standing rigging, wire',
    zone: 'mast and rigging',
    dates: RIG_DATES,
    attributes: ['insurerLifeMonths'],
  },
  {
    id: 'standing_rigging_rod',
    itemClass: 'rigging',
    name: 'standing rigging, rod',
    zone: 'mast and rigging',
    dates: { ...RIG_DATES, overhauled: "the rigger's re-heading certificate" },
    attributes: ['makerIntervalMonths', 'makerLifeMonths'],
  },
  {
    id: 'chainplate',
    itemClass: 'rigging',
    name: 'chainplate or bonded tie-rod',
    zone: 'deck',
    dates: { ...RIG_DATES, tested: 'the crack-test report of the rigger or surveyor' },
    attributes: ['makerIntervalMonths'],
  },
  {
    id: 'running_rigging',
    itemClass: 'rigging',
    name: 'running rigging: halyards, sheets, furling line',
    zone: 'mast and rigging',
    dates: { installed: "the rigger's or chandler's invoice", inspected: "the log book, or the rigger's report" },
    attributes: [],
  },
];
