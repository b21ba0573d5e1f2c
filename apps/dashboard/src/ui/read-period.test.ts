import { expect, test } from 'vitest';
import { periodToType, readPeriod } from './read-period.ts';

test.each([
  ['7 days', 'P7D'],
  [' 1 Year ', 'P1Y'],
  ['3months', 'P3M'],
  ['2 weeks', 'P2W'],
  ['p1y6m', 'P1Y6M'],
])('%s is read as %s', (typed, period) => {
  expect(readPeriod(typed)).toBe(period);
});

test.each(['', 'soon', '7', 'P', '1.5 years', '3 fortnights', '-2 days'])('%s is no length of time', (typed) => {
  expect(readPeriod(typed)).toBeNull();
});

test('what was read is typed again as people write it, and read the same', () => {
  expect(['P7D', 'P1Y', 'P1Y6M'].map(periodToType)).toEqual(['7 days', '1 year', 'P1Y6M']);
  for (const period of ['P7D', 'P1Y', 'P1Y6M']) expect(readPeriod(periodToType(period))).toBe(period);
});
