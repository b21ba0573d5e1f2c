import { expect, test } from 'vitest';
import { randomOf } from './random.ts';

const draw = (seed: string) => {
  const random = randomOf(seed);
  return Array.from({ length: 200 }, () => random.between(1, 6));
};

test('the same seed gives the same numbers, another seed others', () => {
  expect(draw('Samphire/Gas hose')).toEqual(draw('Samphire/Gas hose'));
  expect(draw('Samphire/Gas hose')).not.toEqual(draw('Samphire/Gas hosf'));
});

test('a known seed gives the numbers it gave when the fleets were made', () => {
  expect(draw('garboard').slice(0, 12)).toEqual([5, 2, 4, 1, 5, 4, 5, 5, 4, 4, 5, 1]);
});

test('both ends are drawn, and nothing outside them', () => {
  expect(new Set(draw('Tansy'))).toEqual(new Set([1, 2, 3, 4, 5, 6]));
});

test('a share is met roughly', () => {
  const random = randomOf('Milkwort');
  const met = Array.from({ length: 1000 }, () => random.chance(0.3)).filter(Boolean).length;
  expect(met).toBeGreaterThan(250);
  expect(met).toBeLessThan(350);
});
