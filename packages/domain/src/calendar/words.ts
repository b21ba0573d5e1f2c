/** Days and periods as people say them: `22 September 2026`, `12 months`. */
import { type Day, dateOfDay } from './day.ts';
import { type Period, parsePeriod } from './period.ts';
import type { RecordedDate } from './recorded-date.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `22 September 2026`. */
export function dayInWords(day: Day): string {
  const { year, month, dayOfMonth } = dateOfDay(day);
  return `${dayOfMonth} ${MONTHS[month - 1]} ${year}`;
}

/** `September 2026`. */
export function monthInWords(day: Day): string {
  return dayInWords(day).replace(/^\d+ /, '');
}

/** As precisely as it was written down: `on 22 September 2026`, `in September 2026`, `in 2026`. */
export function recordedDateInWords(date: RecordedDate): string {
  switch (date.precision) {
    case 'day':
      return `on ${dayInWords(date.first)}`;
    case 'month':
      return `in ${monthInWords(date.first)}`;
    case 'year':
      return `in ${date.text}`;
  }
}

/** A period in the unit it was written in: `P12M` is "12 months", `P1Y` "1 year". */
export const periodInWords = remembered((text: string): string => {
  const parts = [...text.matchAll(/(\d+)([YMWD])/g)];
  return parts.map(([, count, unit]) => `${count} ${UNITS[unit as Unit]}${count === '1' ? '' : 's'}`).join(' and ');
});

type Unit = 'Y' | 'M' | 'W' | 'D';
const UNITS: Record<Unit, string> = { Y: 'year', M: 'month', W: 'week', D: 'day' };

/** Somebody's own figure, in years where they are whole, as people say it: 84 months are `P7Y`. */
export function periodOfMonths(months: number): `P${string}` {
  return months % 12 === 0 ? `P${months / 12}Y` : `P${months}M`;
}

/** A period written in the catalogue. It is our own text, so a wrong one is a fault. */
export const periodOf = remembered((text: string): Period => {
  const period = parsePeriod(text);
  if (!period) throw new Error(`not a period of years, months, weeks and days: ${text}`);
  return period;
});

/** There are only so many periods, in the catalogue and as people's own figures in months; each is read once. */
function remembered<Answer>(read: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const answer = read(text);
    if (known.size < MOST_REMEMBERED) known.set(text, answer);
    return answer;
  };
}

/** More than there are: what anybody sends must not fill the memory. */
const MOST_REMEMBERED = 2000;
