/**
 * A day on the calendar, with no time and no zone: whole days since 1 January 1970.
 *
 * Due dates are days. As plain integers they compare, subtract and sort without a clock or a
 * time zone; ISO 8601 text (`YYYY-MM-DD`) exists only at the edges.
 */
export type Day = number & { readonly __day: never };

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/;

/** Days from 1 March of the year 0 to 1 January 1970: counted from March, a leap day comes last. */
const TO_1970 = 719_468;
const FOUR_CENTURIES = 146_097;

export type DateOfDay = { readonly year: number; readonly month: number; readonly dayOfMonth: number };

/** The day made of a year, a month (1 to 12) and a day of the month; a day or month past the end rolls over. */
export function dayOf(year: number, month: number, dayOfMonth: number): Day {
  const fromMarch = year * 12 + month - 3;
  const years = Math.floor(fromMarch / 12);
  const era = Math.floor(years / 400);
  const ofEra = years - era * 400;
  const before = Math.floor((153 * (fromMarch - years * 12) + 2) / 5);
  const days = ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + before + dayOfMonth - 1;
  return (era * FOUR_CENTURIES + days - TO_1970) as Day;
}

/** Its year, month (1 to 12) and day of the month. */
export function dateOfDay(day: Day): DateOfDay {
  const shifted = day + TO_1970;
  const era = Math.floor(shifted / FOUR_CENTURIES);
  const ofEra = shifted - era * FOUR_CENTURIES;
  const leapDays = Math.floor(ofEra / 1460) - Math.floor(ofEra / 36_524) + Math.floor(ofEra / 146_096);
  const years = Math.floor((ofEra - leapDays) / 365);
  const ofYear = ofEra - (years * 365 + Math.floor(years / 4) - Math.floor(years / 100));
  const fromMarch = Math.floor((5 * ofYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return {
    year: era * 400 + years + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1,
  };
}

/** Reads `YYYY-MM-DD`. `null` when it is not a real day: `2026-02-30` is not. */
export function parseDay(text: string): Day | null {
  if (!ISO_DAY.test(text)) return null;
  const day = dayOf(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8, 10)));
  return formatDay(day) === text ? day : null;
}

/** `YYYY-MM-DD`. */
export function formatDay(day: Day): string {
  if (!Number.isSafeInteger(day)) throw new RangeError(`not a day: ${day}`);
  const { year, month, dayOfMonth } = dateOfDay(day);
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}`;
}

function padded(number: number, length: number): string {
  return String(number).padStart(length, '0');
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
  const { year, month, dayOfMonth } = dateOfDay(day);
  const reached = month + months;
  return Math.min(dayOf(year, reached, dayOfMonth), dayOf(year, reached + 1, 0)) as Day;
}

/** The last day of the month that `day` lies in. */
export function endOfMonth(day: Day): Day {
  const { year, month } = dateOfDay(day);
  return dayOf(year, month + 1, 0);
}

/** 31 December of the year that `day` lies in. */
export function endOfYear(day: Day): Day {
  return dayOf(dateOfDay(day).year, 12, 31);
}
