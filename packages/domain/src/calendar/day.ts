/**
 * A day on the calendar, with no time and no zone: whole days since 1 January 1970.
 *
 * Due dates are days. As plain integers they compare, subtract and sort without a clock or a
 * time zone; ISO 8601 text (`YYYY-MM-DD`) exists only at the edges.
 */
export type Day = number & { readonly __day: never };

const MS_PER_DAY = 86_400_000;
const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/;

/** The day made of a year, a month (1 to 12) and a day of the month; a day past the month's end rolls over. */
export function dayOf(year: number, month: number, dayOfMonth: number): Day {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, dayOfMonth);
  return Math.round(date.getTime() / MS_PER_DAY) as Day;
}

/** Reads `YYYY-MM-DD`. `null` when it is not a real day: `2026-02-30` is not. */
export function parseDay(text: string): Day | null {
  if (!ISO_DAY.test(text)) return null;
  const day = dayOf(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8, 10)));
  return formatDay(day) === text ? day : null;
}

/** `YYYY-MM-DD`. */
export function formatDay(day: Day): string {
  return new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
}

export function addDays(day: Day, days: number): Day {
  return (day + days) as Day;
}

/** Whole days from `from` to `to`; negative when `to` is the earlier. */
export function daysBetween(from: Day, to: Day): number {
  return to - from;
}

/**
 * The corresponding day `months` later, clamped to the month's end: 31 Jan + 1 month is 28 or 29 Feb.
 *
 * Always count from the original day. A chain of clamped steps drifts: 29 Feb 2024 + 17 months is
 * 29 Jul 2025, but in two steps over 28 Feb 2025 it would be the 28th.
 */
export function addMonths(day: Day, months: number): Day {
  const date = new Date(day * MS_PER_DAY);
  const year = date.getUTCFullYear();
  const month = date.getUTCMonth() + 1 + months;
  return Math.min(dayOf(year, month, date.getUTCDate()), dayOf(year, month + 1, 0)) as Day;
}

/** The last day of the month that `day` lies in. */
export function endOfMonth(day: Day): Day {
  const date = new Date(day * MS_PER_DAY);
  return dayOf(date.getUTCFullYear(), date.getUTCMonth() + 2, 0);
}

/** 31 December of the year that `day` lies in. */
export function endOfYear(day: Day): Day {
  return dayOf(new Date(day * MS_PER_DAY).getUTCFullYear(), 12, 31);
}
