import { expect, it } from 'vitest';
import { type Day, parseDay } from './day.ts';
import { parseRecordedDate, type RecordedDate } from './recorded-date.ts';
import { dayInWords, monthInWords, periodInWords, periodOf, recordedDateInWords } from './words.ts';

it('says a day and a month in words', () => {
  expect(dayInWords(parseDay('2026-09-22') as Day)).toBe('22 September 2026');
  expect(dayInWords(parseDay('2026-01-01') as Day)).toBe('1 January 2026');
  expect(monthInWords(parseDay('2026-09-30') as Day)).toBe('September 2026');
});

it.each([
  ['2025-09-22', 'on 22 September 2025'],
  ['2025-09', 'in September 2025'],
  ['2025', 'in 2025'],
])('says %s as precisely as it was recorded', (text, words) => {
  expect(recordedDateInWords(parseRecordedDate(text) as RecordedDate)).toBe(words);
});

it.each([
  ['P12M', '12 months'],
  ['P1Y', '1 year'],
  ['P10Y', '10 years'],
  ['P30D', '30 days'],
  ['P1Y6M', '1 year and 6 months'],
])('says %s in the unit it was written in', (text, words) => {
  expect(periodInWords(text)).toBe(words);
});

it('takes a period that it cannot read for a fault of the catalogue', () => {
  expect(() => periodOf('12 months')).toThrow('12 months');
});
