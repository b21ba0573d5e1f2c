/** A calendar period: whole months and whole days. Years are twelve months. */
import { addDays, addMonths, type Day } from './day.ts';

export type Period = { readonly months: number; readonly days: number };

const ISO_PERIOD = /^P(?!$)(?:(\d+)Y)?(?:(\d+)M)?(?:(\d+)W)?(?:(\d+)D)?$/;

/** Reads an ISO 8601 duration of years, months, weeks and days (`P3Y`, `P42M`, `P7D`); `null` for anything else. */
export function parsePeriod(text: string): Period | null {
  const parts = ISO_PERIOD.exec(text);
  if (!parts) return null;
  const [years, months, weeks, days] = parts.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
  ];
  return { months: years * 12 + months, days: weeks * 7 + days };
}

/** Months first, clamped to the month's end, then days: the order of ISO 8601 and of PostgreSQL's intervals. */
export function addPeriod(day: Day, period: Period): Day {
  return addDays(addMonths(day, period.months), period.days);
}

/** The period to count back by, with `addPeriod`. */
export function backwards({ months, days }: Period): Period {
  return { months: -months, days: -days };
}

/**
 * The last day of a period that *begins with* `day`, so that `day` itself counts: the day before the
 * corresponding day, or the month's last day where the month has no corresponding day.
 * Source: SI 2018/1082 art 1.4 (read as text; applied to other instruments by us).
 */
export function endOfPeriodBeginningWith(day: Day, period: Period): Day {
  const corresponding = addMonths(day, period.months);
  const clamped = addMonths(corresponding, -period.months) < day;
  return addDays(corresponding, clamped ? period.days : period.days - 1);
}
