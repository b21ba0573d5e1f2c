import { expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { day } from './facts.test-support.ts';
import { dueFrom } from './lead-time.ts';

const from = (dueOn: string, since: string | null) =>
  formatDay(dueFrom(day(dueOn), since === null ? null : day(since)));

it('thirty days ahead where nothing is counted, as with a printed date', () => {
  expect(from('2026-06-30', null)).toBe('2026-05-31');
});

it('thirty days ahead of a year, and of ninety days', () => {
  expect(from('2026-06-30', '2025-06-30')).toBe('2026-05-31');
  expect(from('2026-06-30', '2026-04-01')).toBe('2026-05-31');
});

it('a third of an interval that is shorter: two days of a week, ten of a month', () => {
  expect(from('2026-06-08', '2026-06-01')).toBe('2026-06-06');
  expect(from('2026-07-01', '2026-06-01')).toBe('2026-06-21');
});

it('on the day itself what is owed at once', () => {
  expect(from('2026-06-01', '2026-06-01')).toBe('2026-06-01');
  expect(from('2026-06-01', '2026-06-04')).toBe('2026-06-01');
});
