import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { type Anniversary, anniversaryOf, nextUnanswered } from './anniversaries.ts';
import { day } from './facts.test-support.ts';

const THREE_MONTHS = { before: 'P3M', after: 'P3M' } as const;
const BEGINNING_WITH = { after: 'P3M', counting: 'beginning_with' } as const;

const told = ({ on, window, countsFrom }: Anniversary) =>
  [on, window.opens, window.closes, countsFrom].map(formatDay).join(' ');

describe('an anniversary', () => {
  it.each([
    ['two years on', '2024-10-14', 2, '2026-10-14 2026-07-14 2027-01-14 2026-07-14'],
    ['three years back, from an expiry', '2029-10-14', -3, '2026-10-14 2026-07-14 2027-01-14 2026-07-14'],
    ['of a month end, each day clamped on its own', '2024-05-31', 1, '2025-05-31 2025-02-28 2025-08-31 2025-02-28'],
    ['of a leap day, never clamped twice', '2024-02-29', 1, '2025-02-28 2024-11-29 2025-05-29 2024-11-29'],
  ])('%s', (_, base, years, expected) => {
    expect(told(anniversaryOf(day(base), years, THREE_MONTHS))).toBe(expected);
  });

  it('whose period begins with it closes the day before the corresponding day, and has no opening', () => {
    expect(told(anniversaryOf(day('2024-05-20'), 1, BEGINNING_WITH))).toBe(
      '2025-05-20 2025-05-20 2025-08-19 2024-08-20',
    );
  });
});

describe('the next anniversary', () => {
  const after = (window: Parameters<typeof anniversaryOf>[2], ...acts: string[]) => {
    const at = (number: number) => anniversaryOf(day('2024-10-14'), number, window);
    const { next, tooEarly } = nextUnanswered(
      at,
      1,
      acts.map((text) => ({ day: day(text) })),
    );
    return [formatDay(at(next).on), tooEarly.length];
  };

  it.each([
    ['is the first while nothing is done', [], '2025-10-14', 0],
    ['is the second after a survey on the day its window opens', ['2025-07-14'], '2026-10-14', 0],
    ['is still the first after one the day before', ['2025-07-13'], '2025-10-14', 1],
    ['is the second after a late one', ['2026-03-01'], '2026-10-14', 0],
    ['is the third after one in the second window, though the first was missed', ['2026-07-14'], '2027-10-14', 0],
    ['is the second after two in one window', ['2025-08-01', '2025-11-01'], '2026-10-14', 1],
    ['goes on year by year', ['2025-10-01', '2026-10-01', '2027-10-01'], '2028-10-14', 0],
  ])('%s', (_, acts, next, tooEarly) => {
    expect(after(THREE_MONTHS, ...acts)).toEqual([next, tooEarly]);
  });

  it.each([
    ['counts one long before, where no opening is stated', ['2025-02-01'], '2026-10-14', 0],
    ['leaves a late one to the anniversary it was late for', ['2026-02-01'], '2026-10-14', 0],
    ['counts one in the following year for that year', ['2026-11-01'], '2027-10-14', 0],
    ['takes one in the months after the last for a repeat', ['2025-10-20', '2025-12-01'], '2026-10-14', 1],
  ])('%s', (_, acts, next, tooEarly) => {
    expect(after(BEGINNING_WITH, ...acts)).toEqual([next, tooEarly]);
  });
});
