/** The date rules over three calendars that are in common use, each as its own documentation would have it. */
import { addMonths, endOfMonth, formatISO, isBefore, parseISO } from 'date-fns';
import { DateTime } from 'luxon';
import rrule from 'rrule';
import { Temporal } from 'temporal-polyfill';
import type { Calendar } from './rules-by-hand.ts';

export const RRULE_LUXON: Calendar<DateTime> = {
  first: (text) => DateTime.fromISO(text, { zone: 'utc' }),
  last: (text) => {
    const date = DateTime.fromISO(text, { zone: 'utc' });
    return text.length === 7 ? date.endOf('month') : date;
  },
  plusMonths: (date, months) => nextOccurrence(date, months),
  endOfMonth: (date) => date.endOf('month'),
  isBefore: (a, b) => a < b,
  text: (date) => date.toISODate() as string,
};

/** The second of a series that begins on the day; the last of several days of the month clamps as a rule does. */
function nextOccurrence(date: DateTime, months: number): DateTime {
  const short = date.day > 28 ? { bymonthday: [28, 29, 30, 31].filter((day) => day <= date.day), bysetpos: -1 } : {};
  const dtstart = date.toJSDate();
  const series = new rrule.RRule({ freq: rrule.RRule.MONTHLY, interval: months, dtstart, ...short });
  return DateTime.fromJSDate(series.after(dtstart) as Date, { zone: 'utc' });
}

export const TEMPORAL: Calendar<Temporal.PlainDate> = {
  first: (text) => Temporal.PlainDate.from(text.length === 7 ? `${text}-01` : text),
  last: (text) =>
    text.length === 7 ? lastDayOf(Temporal.PlainDate.from(`${text}-01`)) : Temporal.PlainDate.from(text),
  plusMonths: (date, months) => date.add({ months }),
  endOfMonth: lastDayOf,
  isBefore: (a, b) => Temporal.PlainDate.compare(a, b) < 0,
  text: (date) => date.toString(),
};

function lastDayOf(date: Temporal.PlainDate): Temporal.PlainDate {
  return date.with({ day: date.daysInMonth });
}

export const DATE_FNS: Calendar<Date> = {
  first: (text) => parseISO(text),
  last: (text) => (text.length === 7 ? endOfMonth(parseISO(text)) : parseISO(text)),
  plusMonths: (date, months) => addMonths(date, months),
  endOfMonth: (date) => endOfMonth(date),
  isBefore: (a, b) => isBefore(a, b),
  text: (date) => formatISO(date, { representation: 'date' }),
};
