/** Which day it is somewhere. The instant is an argument: the domain has no clock. */
import { type Day, parseDay } from './day.ts';

/** The calendar day in an IANA time zone (`Europe/Oslo`) at `instant`. Throws `RangeError` for an unknown zone. */
export function dayInZone(instant: Date, timeZone: string): Day {
  const parts = formatIn(timeZone).formatToParts(instant);
  const part = (type: string) => parts.find((each) => each.type === type)?.value ?? '';
  const day = parseDay(`${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`);
  if (day === null) throw new RangeError(`no day for ${instant.toISOString()} in ${timeZone}`);
  return day;
}

/** Making a format costs a hundred times more than using it; there are only so many zones. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatIn(timeZone: string): Intl.DateTimeFormat {
  const known =
    formats.get(timeZone) ??
    new Intl.DateTimeFormat('en-GB', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' });
  formats.set(timeZone, known);
  return known;
}

export function isTimeZone(text: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: text });
    return true;
  } catch {
    return false;
  }
}
