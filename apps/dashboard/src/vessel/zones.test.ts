import { expect, test } from 'vitest';
import { byZone } from './zones.ts';

test('places come in survey order, strange ones last', () => {
  const zones = ['sail loft', 'engine_space', 'Gas locker', 'papers', 'aft cabin'];
  expect(byZone(zones, (zone) => zone).map(({ zone }) => zone)).toEqual([
    'papers',
    'gas locker',
    'engine space',
    'aft cabin',
    'sail loft',
  ]);
});

test('a place keyed in two ways is one place', () => {
  const [place, ...others] = byZone(['gas_locker', 'Gas locker'], (zone) => zone);
  expect(place?.things).toHaveLength(2);
  expect(others).toEqual([]);
});
