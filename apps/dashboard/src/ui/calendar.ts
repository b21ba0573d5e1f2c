/** Calendar days as the screens need them: ISO text in, whole days since 1970 for arithmetic, `25 Nov 2026` out. */

const short = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
const long = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
const shortMonth = new Intl.DateTimeFormat('en-GB', { month: 'short', year: 'numeric', timeZone: 'UTC' });
const instant = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
});

const MS_A_DAY = 86_400_000;

/** Whole days since 1 January 1970. */
export function dayNumber(day: string): number {
  return Math.round(Date.parse(day) / MS_A_DAY);
}

export function dayFromNumber(number: number): string {
  return new Date(number * MS_A_DAY).toISOString().slice(0, 10);
}

/** From `earlier` to `later`, in days. */
export function daysBetween(earlier: string, later: string): number {
  return dayNumber(later) - dayNumber(earlier);
}

/** The same day of the month so many months on; clamped to the month's end. */
export function addMonths(day: string, months: number): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 + months, Math.min(date, last))).toISOString().slice(0, 10);
}

/** `25 Nov 2026`. English months are told in three letters, September too. */
export function formatDay(day: string): string {
  return short.format(new Date(day)).replace('Sept', 'Sep');
}

export function formatDayInFull(day: string): string {
  return long.format(new Date(day));
}

/** As precisely as it was written down: `25 Nov 2026`, `Nov 2026` or `2026`. */
export function formatRecordedDate(date: string): string {
  if (date.length === 4) return date;
  if (date.length === 7) return shortMonth.format(new Date(`${date}-01`)).replace('Sept', 'Sep');
  return formatDay(date);
}

/** `25 Nov 2026, 08:12`, in the reader's own zone. */
export function formatInstant(milliseconds: number): string {
  return instant.format(new Date(milliseconds)).replace('Sept', 'Sep');
}

/** Today where the reader is. The server decides what day it is for a vessel; this only offers a value. */
export function readersToday(): string {
  const now = new Date();
  return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate())).toISOString().slice(0, 10);
}

/** `1 April`, of the `MM-DD` of every year. */
export function formatDayOfYear(monthDay: string): string {
  const [month = '', day = ''] = monthDay.split('-');
  return `${Number(day)} ${monthNames()[Number(month) - 1] ?? ''}`;
}

/** January to December. */
export function monthNames(): string[] {
  const name = new Intl.DateTimeFormat('en-GB', { month: 'long', timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, index) => name.format(new Date(Date.UTC(2001, index, 1))));
}

/** A term that is chosen in days ends so many days from now: an instant for the API. */
export const endAfter = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();
