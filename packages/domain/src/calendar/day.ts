/**
 * A day on the calendar, with no time and no zone: whole days since 1 January 1970.
 *
 * Due dates are days. As plain integers they compare, subtract and sort without a clock or a
 * time zone; ISO 8601 text (`YYYY-MM-DD`) exists only at the edges.
 */
export type Day = number & { readonly __day: never };

const FOUR_CENTURIES = 146_097;
/**
 * Counted from 1 March, so that a leap day comes last, and from so long ago that no number is below nought:
 * then `| 0` rounds down, and the compiler makes whole-number divisions of it, several times as fast.
 */
const ERAS_BEFORE = 1000;
const YEARS_BEFORE = ERAS_BEFORE * 400;
/** Days from there to 1 January 1970. */
const TO_1970 = ERAS_BEFORE * FOUR_CENTURIES + 719_468;

export type DateOfDay = { readonly year: number; readonly month: number; readonly dayOfMonth: number };

/** The day made of a year, a month (1 to 12) and a day of the month; a day or month past the end rolls over. */
export function dayOf(year: number, month: number, dayOfMonth: number): Day {
  const fromMarch = (year + YEARS_BEFORE) * 12 + month - 3;
  const years = (fromMarch / 12) | 0;
  const era = (years / 400) | 0;
  const ofEra = years - era * 400;
  const before = ((153 * (fromMarch - years * 12) + 2) / 5) | 0;
  const days = ofEra * 365 + ((ofEra / 4) | 0) - ((ofEra / 100) | 0) + before + dayOfMonth - 1;
  return (era * FOUR_CENTURIES + days - TO_1970) as Day;
}

/** Its year, month (1 to 12) and day of the month. */
export function dateOfDay(day: Day): DateOfDay {
  const shifted = day + TO_1970;
  const era = (shifted / FOUR_CENTURIES) | 0;
  const ofEra = shifted - era * FOUR_CENTURIES;
  const leapDays = ((ofEra / 1460) | 0) - ((ofEra / 36_524) | 0) + ((ofEra / 146_096) | 0);
  const years = ((ofEra - leapDays) / 365) | 0;
  const ofYear = ofEra - (years * 365 + ((years / 4) | 0) - ((years / 100) | 0));
  const fromMarch = ((5 * ofYear + 2) / 153) | 0;
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return {
    year: era * 400 + years + (month <= 2 ? 1 : 0) - YEARS_BEFORE,
    month,
    dayOfMonth: ofYear - (((153 * fromMarch + 2) / 5) | 0) + 1,
  };
}

/** Reads `YYYY-MM-DD`. `null` when it is not a real day: `2026-02-30` is not. */
export function parseDay(text: string): Day | null {
  if (text.length !== 10 || text[4] !== '-' || text[7] !== '-') return null;
  const year = digitsIn(text, 0, 4);
  const month = digitsIn(text, 5, 7);
  const dayOfMonth = digitsIn(text, 8, 10);
  if (year < 0 || month < 1 || month > 12 || dayOfMonth < 1) return null;
  const day = dayOf(year, month, dayOfMonth);
  return dayOfMonth > 28 && day >= dayOf(year, month + 1, 1) ? null : day;
}

/** Reads a day that has been checked already; throws where it is none. */
export function dayOfText(text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new Error(`no day: ${text}`);
  return day;
}

/** The number that the digits of `text` from one place up to another make; -1 where something else stands there. */
export function digitsIn(text: string, from: number, to: number): number {
  let number = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (!(digit >= 0 && digit <= 9)) return -1;
    number = number * 10 + digit;
  }
  return number;
}

/** `YYYY-MM-DD`. */
export function formatDay(day: Day): string {
  if (!Number.isSafeInteger(day)) throw new RangeError(`not a day: ${day}`);
  const { year, month, dayOfMonth } = dateOfDay(day);
  return `${String(year).padStart(4, '0')}-${TWO_DIGITS[month]}-${TWO_DIGITS[dayOfMonth]}`;
}

const TWO_DIGITS = Array.from({ length: 32 }, (_, number) => String(number).padStart(2, '0'));

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
  const month = (MONTH_OF[day - LAID_OUT_FROM] ?? NOT_LAID_OUT) + months;
  if (month >= 0 && month < MONTHS_LAID_OUT) {
    const day0 = day - (MONTH_START[month - months] as number);
    return Math.min((MONTH_START[month] as number) + day0, (MONTH_START[month + 1] as number) - 1) as Day;
  }
  return addMonthsCounted(day, months);
}

/** For any day at all, by arithmetic alone. */
function addMonthsCounted(day: Day, months: number): Day {
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

/**
 * The months of the two centuries in which nearly every day here lies, laid out once: looking one up takes a third
 * of the time that counting does. The month of each day, and the first day of each month.
 */
const YEARS_LAID_OUT = [1950, 2150] as const;
const MONTHS_LAID_OUT = (YEARS_LAID_OUT[1] - YEARS_LAID_OUT[0]) * 12;
const MONTH_START = Int32Array.from({ length: MONTHS_LAID_OUT + 1 }, (_, month) =>
  dayOf(YEARS_LAID_OUT[0], month + 1, 1),
);
const LAID_OUT_FROM = dayOf(YEARS_LAID_OUT[0], 1, 1);
const MONTH_OF = new Uint16Array(dayOf(YEARS_LAID_OUT[1], 1, 1) - LAID_OUT_FROM);
for (let month = 0; month < MONTHS_LAID_OUT; month++)
  MONTH_OF.fill(
    month,
    (MONTH_START[month] as number) - LAID_OUT_FROM,
    (MONTH_START[month + 1] as number) - LAID_OUT_FROM,
  );
/** Far enough below every month that no number of months leads back. */
const NOT_LAID_OUT = -1_000_000;
