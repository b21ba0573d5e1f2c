import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMonths, type Day, dayOf, formatDay, parseDay } from './day.ts';
import { addPeriod, endOfPeriodBeginningWith, parsePeriod } from './period.ts';

const day = (text: string) => parseDay(text) as Day;
const anyDay = fc.integer({ min: dayOf(1900, 1, 1), max: dayOf(2200, 12, 31) }) as fc.Arbitrary<Day>;

describe('reading a period', () => {
  it.each([
    ['P3Y', { months: 36, days: 0 }],
    ['P42M', { months: 42, days: 0 }],
    ['P1Y6M', { months: 18, days: 0 }],
    ['P7D', { months: 0, days: 7 }],
    ['P2W', { months: 0, days: 14 }],
    ['P1M10D', { months: 1, days: 10 }],
  ])('reads %s', (text, period) => {
    expect(parsePeriod(text)).toEqual(period);
  });

  it.each(['P', '', '3Y', 'P1.5Y', 'PT1H', 'P-1M', 'P1Y ', 'P1D1M'])('refuses %j', (text) => {
    expect(parsePeriod(text)).toBeNull();
  });
});

it('adds months first, clamped, and then days', () => {
  expect(formatDay(addPeriod(day('2023-01-31'), { months: 1, days: 1 }))).toBe('2023-03-01');
});

describe('a period that begins with a day', () => {
  it.each([
    ['2024-05-20', 15, '2025-08-19'],
    ['2024-05-20', 36, '2027-05-19'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2024-01-29', 1, '2024-02-28'],
    ['2024-01-30', 1, '2024-02-29'],
  ])('that begins with %s ends %i months on, on %s', (from, months, to) => {
    expect(formatDay(endOfPeriodBeginningWith(day(from), { months, days: 0 }))).toBe(to);
  });

  // SI 2018/1082 art 1.4: the day before the corresponding day or, where there is none, the last day of the
  // month. https://legislation.gov.uk/uksi/2018/1082/article/1.4/made/data.xht
  it('ends with the month that has no corresponding day, as SI 2018/1082 says', () => {
    expect(formatDay(endOfPeriodBeginningWith(day('2024-03-31'), { months: 1, days: 0 }))).toBe('2024-04-30');
  });

  it('counts days on top of a month that was cut short', () => {
    expect(formatDay(endOfPeriodBeginningWith(day('2024-01-31'), { months: 1, days: 1 }))).toBe('2024-03-01');
    expect(formatDay(endOfPeriodBeginningWith(day('2024-01-31'), { months: 0, days: 7 }))).toBe('2024-02-06');
  });

  it('is at most one day shorter than the period counted after the day', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 240 }), (from, months) => {
        const end = endOfPeriodBeginningWith(from, { months, days: 0 });
        expect([0, 1]).toContain(addMonths(from, months) - end);
      }),
    );
  });
});
