/**
 * A date as somebody wrote it down: to the day, the month or the year.
 *
 * Real records often say "March 2024". The text is kept as written, with the first and the last day
 * that it can mean; which of the two counts is for the rule to say.
 */
import { type Day, dayOf, endOfMonth, endOfYear, parseDay } from './day.ts';

export type RecordedDate = {
  readonly text: string;
  readonly precision: 'day' | 'month' | 'year';
  readonly first: Day;
  readonly last: Day;
};

/** Reads `2024`, `2024-03` or `2024-03-18`. `null` when it is none of these, or no real day. */
export function parseRecordedDate(text: string): RecordedDate | null {
  if (/^\d{4}$/.test(text)) {
    const first = dayOf(Number(text), 1, 1);
    return { text, precision: 'year', first, last: endOfYear(first) };
  }
  if (/^\d{4}-(0[1-9]|1[0-2])$/.test(text)) {
    const first = dayOf(Number(text.slice(0, 4)), Number(text.slice(5)), 1);
    return { text, precision: 'month', first, last: endOfMonth(first) };
  }
  const day = parseDay(text);
  return day === null ? null : { text, precision: 'day', first: day, last: day };
}
