import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addMonths,
  type Day,
  dateOfDay,
  dayOf,
  daysBetween,
  endOfMonth,
  endOfYear,
  formatDay,
  parseDay,
} from './day.ts';

const day = (text: string) => parseDay(text) as Day;
const anyDay = fc.integer({ min: dayOf(1900, 1, 1), max: dayOf(2200, 12, 31) }) as fc.Arbitrary<Day>;
const anyMonths = fc.integer({ min: -600, max: 600 });
const dayOfMonth = (of: Day) => Number(formatDay(of).slice(8));

describe('reading a day', () => {
  it.each([
    '2026-02-30',
    '2023-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '01/02/2026',
    '2026-02-28T00:00',
    '2026-02-3x',
    '-026-02-03',
    '',
  ])('refuses %j', (text) => {
    expect(parseDay(text)).toBeNull();
  });

  it.each(['1900-01-01', '1969-12-31', '1970-01-01', '2024-02-29', '2100-02-28', '2199-12-31'])(
    'reads %s and writes it back the same',
    (text) => {
      expect(formatDay(day(text))).toBe(text);
    },
  );

  it('counts from 1 January 1970', () => {
    expect([day('1969-12-31'), day('1970-01-01'), day('1970-01-02')]).toEqual([-1, 0, 1]);
  });
});

describe('adding months', () => {
  it.each([
    ['2023-01-15', 12, '2024-01-15'],
    ['2023-01-31', 1, '2023-02-28'],
    ['2024-01-31', 1, '2024-02-29'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2024-02-29', 17, '2025-07-29'],
    ['2025-09-30', 17, '2027-02-28'],
    ['2023-11-30', 3, '2024-02-29'],
    ['2024-03-31', -1, '2024-02-29'],
    ['2024-01-10', -1, '2023-12-10'],
  ])('%s and %i months is %s', (from, months, to) => {
    expect(formatDay(addMonths(day(from), months))).toBe(to);
  });

  it('drifts when it is done in steps, so it never is', () => {
    const inSteps = addMonths(addMonths(day('2024-02-29'), 12), 5);
    expect(formatDay(inSteps)).toBe('2025-07-28');
    expect(addMonths(day('2024-02-29'), 17)).not.toBe(inSteps);
  });

  // Dodds v Walker (HL 1981): four months from 30 September end on the corresponding day, 30 January;
  // 31 January was one day too late. https://swarb.co.uk/dodds-v-walker-hl-1981/
  it('ends on the corresponding day, as in Dodds v Walker', () => {
    expect(formatDay(addMonths(day('1978-09-30'), 4))).toBe('1979-01-30');
  });

  it('keeps the day of the month, or takes the last day of a shorter month', () => {
    fc.assert(
      fc.property(anyDay, anyMonths, (from, months) => {
        const to = addMonths(from, months);
        expect(to === endOfMonth(to) || dayOfMonth(to) === dayOfMonth(from)).toBe(true);
        expect(dayOfMonth(to)).toBeLessThanOrEqual(dayOfMonth(from));
      }),
    );
  });

  it('never puts two days in the other order', () => {
    fc.assert(
      fc.property(anyDay, fc.nat(400), anyMonths, (from, later, months) => {
        expect(addMonths(from, months)).toBeLessThanOrEqual(addMonths(addDays(from, later), months));
      }),
    );
  });

  it('undoes itself for any day that every month has', () => {
    fc.assert(
      fc.property(anyDay, anyMonths, (from, months) => {
        fc.pre(dayOfMonth(from) <= 28);
        expect(addMonths(addMonths(from, months), -months)).toBe(from);
      }),
    );
  });

  it('gives the day that Temporal gives, for 100,000 pairs', { timeout: 60_000 }, () => {
    const pairs = fc.sample(fc.tuple(anyDay, anyMonths), { numRuns: 100_000, seed: 1981 });
    const differing = pairs.filter(([from, months]) => {
      const theirs = Temporal.PlainDate.from(formatDay(from)).add({ months }, { overflow: 'constrain' });
      return formatDay(addMonths(from, months)) !== theirs.toString();
    });
    expect(differing).toEqual([]);
  });
});

describe('days', () => {
  it('are counted across a leap day and a change of clocks', () => {
    expect(daysBetween(day('2024-02-28'), day('2024-03-01'))).toBe(2);
    expect(daysBetween(day('2024-03-30'), day('2024-04-01'))).toBe(2);
    expect(daysBetween(day('2024-04-01'), day('2024-03-30'))).toBe(-2);
  });

  it('know the end of their month and year', () => {
    expect(formatDay(endOfMonth(day('2024-02-01')))).toBe('2024-02-29');
    expect(formatDay(endOfMonth(day('2026-12-31')))).toBe('2026-12-31');
    expect(formatDay(endOfYear(day('2026-01-01')))).toBe('2026-12-31');
  });
});

describe('the parts of a day', () => {
  it('are those of the proleptic Gregorian calendar, over more than a thousand years', () => {
    for (let at = dayOf(1000, 1, 1) as number; at < dayOf(2600, 1, 1); at++) {
      const date = new Date(at * 86_400_000);
      const parts = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, dayOfMonth: date.getUTCDate() };
      const read = dateOfDay(at as Day);
      if (read.dayOfMonth !== parts.dayOfMonth || read.month !== parts.month || read.year !== parts.year)
        expect(read).toEqual(parts);
      if (dayOf(read.year, read.month, read.dayOfMonth) !== at) expect(read).toEqual(parts);
    }
    expect(dateOfDay(day('2024-02-29'))).toEqual({ year: 2024, month: 2, dayOfMonth: 29 });
  });

  it('roll over when a day or a month lies past the end', () => {
    expect(formatDay(dayOf(2023, 14, 30))).toBe('2024-03-01');
    expect(formatDay(dayOf(2024, -9, 0))).toBe('2023-02-28');
  });

  it('are not to be had of what is no day', () => {
    expect(() => formatDay(Number.NaN as Day)).toThrow('not a day');
  });
});
