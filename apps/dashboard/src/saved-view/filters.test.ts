import { expect, test } from 'vitest';
import { filtersOf, isSame } from './filters.ts';

test('a view keeps the filters, not the day, what is open or its own name', () => {
  const search = { weight: 'law', months: 6, asAt: '2026-11-25', open: 'x', view: 'v', kind: undefined };
  expect(filtersOf(search)).toEqual({ weight: 'law', months: '6' });
});

test('the same filters are the same in any order; one more, one less or another is a change', () => {
  expect(isSame({ a: '1', b: '2' }, { b: '2', a: '1' })).toBe(true);
  expect([isSame({ a: '1' }, {}), isSame({}, { a: '1' }), isSame({ a: '1' }, { a: '2' })]).toEqual([
    false,
    false,
    false,
  ]);
});
