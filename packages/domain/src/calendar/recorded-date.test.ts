import { expect, it } from 'vitest';
import { formatDay } from './day.ts';
import { parseRecordedDate } from './recorded-date.ts';

it.each([
  ['2024', 'year', '2024-01-01', '2024-12-31'],
  ['2024-02', 'month', '2024-02-01', '2024-02-29'],
  ['2023-02', 'month', '2023-02-01', '2023-02-28'],
  ['2024-12', 'month', '2024-12-01', '2024-12-31'],
  ['2024-03-18', 'day', '2024-03-18', '2024-03-18'],
])('%s is known to the %s: any day from %s to %s', (text, precision, first, last) => {
  const date = parseRecordedDate(text);
  expect(date).toMatchObject({ text, precision });
  expect([date?.first, date?.last].map((day) => day !== undefined && formatDay(day))).toEqual([first, last]);
});

it.each(['2024-13', '2024-00', '2024-2', '24', '2026-02-30', 'March 2024', ''])('refuses %j', (text) => {
  expect(parseRecordedDate(text)).toBeNull();
});
