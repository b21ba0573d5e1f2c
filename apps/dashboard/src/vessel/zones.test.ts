import { expect, test } from 'vitest';
import { zoneWords } from '../strings/zones.ts';
import { byZone } from './zones.ts';

test('places come in survey order, strange ones last', () => {
  const zones = ['sail loft', 'engine_space', 'Gas locker', 'papers', 'aft cabin'];
  expect(byZone(zones, (zone) => zone).map(({ zone }) => zone)).toEqual([
    'papers and identity',
    'gas locker',
    'engine, fuel and exhaust',
    'aft cabin',
    'sail loft',
  ]);
});

test('a place keyed in two ways is one place', () => {
  const [place, ...others] = byZone(['gas_locker', 'Gas locker'], (zone) => zone);
  expect(place?.things).toHaveLength(2);
  expect(others).toEqual([]);
});

test('every place of the route has its place in the order', () => {
  const names = Object.values(zoneWords);
  expect(byZone([...names].reverse(), (zone) => zone).map(({ zone }) => zone)).toEqual(
    byZone(names, (zone) => zone).map(({ zone }) => zone),
  );
  expect(byZone(names, (zone) => zone).at(-1)?.zone).toBe('trial under way');
});
