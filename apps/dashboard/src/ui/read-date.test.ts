import { describe, expect, test } from 'vitest';
import { strings } from '../strings/record.ts';
import { readDate } from './read-date.ts';

describe('a date is read no more precisely than it was written', () => {
  test.each([
    ['2026-11-25', '2026-11-25'],
    ['25 Nov 2026', '2026-11-25'],
    ['25 november 2026', '2026-11-25'],
    ['5th Sept. 2026', '2026-09-05'],
    ['Nov 25, 2026', '2026-11-25'],
    [' Nov  2026 ', '2026-11'],
    ['2026-3', '2026-03'],
    ['2026', '2026'],
  ])('%s', (typed, date) => {
    expect(readDate(typed)).toEqual({ kind: 'read', date });
  });
});

test('a date whose day and month could be mistaken for each other is not guessed', () => {
  for (const typed of ['03/04/2026', '3-4-26', '03.04.2026']) {
    expect(readDate(typed)).toEqual({ kind: 'fault', why: strings.dateFaults.order });
  }
});

test('a day that the calendar does not have is refused', () => {
  for (const typed of ['2026-02-30', '31 Jun 2026', '2026-13', '29 Feb 2027']) {
    expect(readDate(typed)).toEqual({ kind: 'fault', why: strings.dateFaults.noSuchDay });
  }
});

test('what is no date is refused with an example', () => {
  expect(readDate('last spring')).toEqual({ kind: 'fault', why: strings.dateFaults.unreadable });
  expect(readDate('')).toEqual({ kind: 'fault', why: strings.dateFaults.none });
});
