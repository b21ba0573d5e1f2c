import { describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { AskedDay, CalendarDay, Duration, Instant, Money, RecordedDate, TimeZone, words } from './shared.ts';

const accepts = (shape: z.ZodType, value: unknown) => shape.safeParse(value).success;
const complaints = (shape: z.ZodType, value: unknown) =>
  shape.safeParse(value).error?.issues.map(({ message }) => message) ?? [];

describe('a day', () => {
  it.each(['2026-02-28', '2024-02-29', '1996-12-31'])('is one on the calendar: %s', (day) => {
    expect(accepts(CalendarDay, day)).toBe(true);
  });

  it.each([
    '2026-02-29',
    '2026-02-30',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '20260101',
    '2026-01-01T00:00:00Z',
    '',
    20260101,
  ])('is refused in one sentence where it is none: %s', (day) => {
    expect(complaints(CalendarDay, day)).toHaveLength(1);
  });

  it('that is asked about lies between 1900 and 2200', () => {
    expect(['1899-12-31', '1900-01-01', '2200-12-31', '2201-01-01'].map((day) => accepts(AskedDay, day))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});

describe('a recorded date', () => {
  it.each(['2024', '2024-03', '2024-03-18', '2024-02-29', '2024-12'])('is a day, a month or a year: %s', (date) => {
    expect(accepts(RecordedDate, date)).toBe(true);
  });

  it.each([
    ['2023-02-29', 'is not on the calendar'],
    ['2024-13', 'is not on the calendar'],
    ['2024-00', 'is not on the calendar'],
    ['24', 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024'],
    ['March 2024', 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024'],
    ['2024-03-18 ', 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024'],
    ['-2024', 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024'],
  ])('is refused in one sentence where it is none: %s', (date, complaint) => {
    expect(complaints(RecordedDate, date)).toEqual([complaint]);
  });
});

describe('an instant', () => {
  it('has its offset', () => {
    const some = ['2026-11-25T08:12:00Z', '2026-11-25T08:12:00+01:00', '2026-11-25T08:12:00', '2026-11-25'];
    expect(some.map((each) => accepts(Instant, each))).toEqual([true, true, false, false]);
  });
});

describe('a duration', () => {
  it('is of whole years, months, weeks and days', () => {
    const some = ['P3Y', 'P42M', 'P1Y6M', 'P2W', 'P', 'P1.5Y', '-P1Y', 'PT1H'];
    expect(some.map((each) => accepts(Duration, each))).toEqual([true, true, true, true, false, false, false, false]);
  });
});

describe('money', () => {
  it('is a decimal number with at most two places, and a code', () => {
    const some = ['1234.50', '0', '0.5', '1.234', '-1', '1e3', '.5', '12345678901234'];
    expect(some.map((amount) => accepts(Money, { amount, currency: 'EUR' }))).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
      false,
      false,
    ]);
    expect(accepts(Money, { amount: '1', currency: 'eur' })).toBe(false);
  });
});

describe('a time zone', () => {
  it('is a name that is known, and no offset', () => {
    const some = ['Europe/Oslo', 'UTC', 'America/Argentina/Buenos_Aires', '+02:00', 'Europe/Atlantis', ''];
    expect(some.map((each) => accepts(TimeZone, each))).toEqual([true, true, true, false, false, false]);
  });
});

describe('words', () => {
  it('are kept without the space around them', () => {
    expect(words(5).parse('  Teal\n')).toBe('Teal');
  });

  it('may have line breaks, accents and other alphabets', () => {
    expect(['a\nb', 'Bjørn', '帆船', '⛵'].every((text) => accepts(words(10), text))).toBe(true);
  });

  it('are some, not too many, and printable', () => {
    expect(['', '   ', 'abcdef', 'a\u0000', 'a\u007f', 'a\u001b[0m'].map((text) => accepts(words(5), text))).toEqual(
      Array(6).fill(false),
    );
  });
});
