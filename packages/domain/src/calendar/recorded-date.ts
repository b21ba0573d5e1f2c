/**
 * A date as somebody wrote it down: to the day, the month or the year.
 *
 * Real records often say "March 2024". The text is kept as written, with the first and the last day
 * that it can mean; which of the two counts is for the rule to say.
 */
import { type Day, dayOf, digitsIn, endOfMonth, endOfYear, parseDay } from './day.ts';

export type RecordedDate = {
  readonly text: string;
  readonly precision: 'day' | 'month' | 'year';
  readonly first: Day;
  readonly last: Day;
};

/** Reads `2024`, `2024-03` or `2024-03-18`. `null` when it is none of these, or no real day. */
export function parseRecordedDate(text: string): RecordedDate | null {
  const first = firstDayOf(text);
  if (first === null) return null;
  return { text, precision: precisionOf(text), first, last: lastDayFrom(first, text) };
}

/** The first day that the text can mean; `null` when it is no date. */
export function firstDayOf(text: string): Day | null {
  if (text.length === 10) return parseDay(text);
  const year = digitsIn(text, 0, 4);
  if (text.length === 4) return year < 0 ? null : dayOf(year, 1, 1);
  const month = text.length === 7 && text[4] === '-' ? digitsIn(text, 5, 7) : -1;
  return year < 0 || month < 1 || month > 12 ? null : dayOf(year, month, 1);
}

/** The last day that it can mean, from its first. */
export function lastDayFrom(first: Day, text: string): Day {
  switch (precisionOf(text)) {
    case 'day':
      return first;
    case 'month':
      return endOfMonth(first);
    case 'year':
      return endOfYear(first);
  }
}

function precisionOf({ length }: string): RecordedDate['precision'] {
  return length === 10 ? 'day' : length === 7 ? 'month' : 'year';
}
