import { expect, it } from 'vitest';
import { formatDay } from './day.ts';
import { dayInZone, isTimeZone } from './day-in-zone.ts';

it.each([
  ['2026-03-28T23:30:00Z', 'UTC', '2026-03-28'],
  ['2026-03-28T23:30:00Z', 'Europe/Oslo', '2026-03-29'],
  ['2026-03-29T01:30:00Z', 'America/St_Johns', '2026-03-28'],
  ['2026-03-28T11:00:00Z', 'Pacific/Kiritimati', '2026-03-29'],
])('%s is, in %s, on %s', (instant, zone, expected) => {
  expect(formatDay(dayInZone(new Date(instant), zone))).toBe(expected);
});

it('tells a time zone from any other text', () => {
  expect(isTimeZone('Europe/Oslo')).toBe(true);
  expect(isTimeZone('Oslo-ish')).toBe(false);
});
