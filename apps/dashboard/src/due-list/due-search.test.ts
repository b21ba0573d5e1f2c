import { expect, test } from 'vitest';
import { isFiltered, readDueSearch, toDueQuery } from './due-search.ts';

test('what the address says is read, and what it cannot mean is left aside', () => {
  expect(readDueSearch({ standing: 'overdue', until: '3-months', asAt: '2026-12-01' })).toEqual({
    standing: 'overdue',
    until: '3-months',
    asAt: '2026-12-01',
  });
  expect(readDueSearch({ standing: 'fine', weight: 'toString', asAt: '2026-13-01', vessel: '' })).toEqual({});
});

test('"until" is counted in days from the day asked', () => {
  expect(toDueQuery({ asAt: '2026-11-25', until: '3-months' })).toEqual({ asOf: '2026-11-25', horizonDays: 92 });
  expect(toDueQuery({ asAt: '2027-03-01' }).horizonDays).toBe(366);
  expect(toDueQuery({ asAt: '2026-11-25', until: 'any' })).toEqual({ asOf: '2026-11-25' });
});

test('a day or an open row is no filter', () => {
  expect(isFiltered({ asAt: '2026-11-25', open: 'x', until: '3-months' })).toBe(false);
  expect(isFiltered({ weight: 'law' })).toBe(true);
});
