import { expect, test } from 'vitest';
import { addMonths, dayFromNumber, dayNumber, daysBetween, formatDay, formatRecordedDate } from './calendar.ts';

test('a day is never moved by the time zone of the reader', () => {
  expect(formatDay('2026-11-25')).toBe('25 Nov 2026');
  expect(dayFromNumber(dayNumber('2026-03-29'))).toBe('2026-03-29');
});

test('September is told in three letters like every month', () => {
  expect(formatDay('2026-09-22')).toBe('22 Sep 2026');
});

test('a date known to the month or the year is shown no more precisely than that', () => {
  expect(formatRecordedDate('2026-11')).toBe('Nov 2026');
  expect(formatRecordedDate('2026')).toBe('2026');
});

test('months are added to the end of a shorter month and across the year', () => {
  expect(addMonths('2026-11-30', 3)).toBe('2027-02-28');
  expect(addMonths('2027-01-31', 1)).toBe('2027-02-28');
  expect(addMonths('2026-11-25', 24)).toBe('2028-11-25');
});

test('days are counted across the change of the clocks', () => {
  expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  expect(daysBetween('2026-11-25', '2026-09-22')).toBe(-64);
});
