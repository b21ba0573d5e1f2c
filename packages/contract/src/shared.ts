/** The shapes that every resource of the API is made of. */
import * as z from 'zod';

export const Id = z
  .uuid('must be a UUID')
  .meta({ id: 'Id', description: 'UUIDv7.', example: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a' });

export const CalendarDay = z.iso
  .date({ error: 'must be a real day, YYYY-MM-DD', abort: true })
  .meta({ id: 'CalendarDay', description: 'A day, `YYYY-MM-DD`, in the vessel’s own place.', example: '2027-03-18' });

const FIRST_ASKED = '1900-01-01';
const LAST_ASKED = '2200-12-31';

/** The day a question is asked as at. */
export const AskedDay = CalendarDay.refine(
  (day) => day >= FIRST_ASKED && day <= LAST_ASKED,
  `must lie between ${FIRST_ASKED} and ${LAST_ASKED}`,
);

export const RecordedDate = z
  .string()
  .regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, {
    error: 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024',
    abort: true,
  })
  .refine(isOnTheCalendar, 'is not on the calendar')
  .meta({
    id: 'RecordedDate',
    description: 'A date as written down: to the day, the month or the year.',
    example: '2024-03',
  });

function isOnTheCalendar(text: string): boolean {
  return z.iso.date().safeParse(`${text}-01-01`.slice(0, 10)).success;
}

export const Instant = z.iso
  .datetime({ offset: true, error: 'must be an instant with its offset: 2026-11-25T08:12:00Z' })
  .meta({ id: 'Instant', description: 'RFC 3339 with offset.', example: '2026-11-25T08:12:00Z' });

export const Duration = z
  .string()
  .regex(/^P(?!$)(\d+Y)?(\d+M)?(\d+W)?(\d+D)?$/, 'must be an ISO 8601 duration such as P3Y or P42M')
  .meta({ id: 'Duration', example: 'P42M' });

export const Money = z
  .strictObject({
    amount: z.string().regex(/^\d{1,13}(\.\d{1,2})?$/, 'must be a decimal number such as 1234.50'),
    currency: z.string().regex(/^[A-Z]{3}$/, 'must be an ISO 4217 code'),
  })
  .meta({ id: 'Money', example: { amount: '1234.50', currency: 'EUR' } });

/** `null` beside a shape that has a name of its own. */
export const orNull = <T extends z.ZodType>(shape: T) => z.union([shape, z.null()]);

/** One page of a list: the rows, and the cursor of the next page or `null` at the end. */
export const pageOf = <T extends z.ZodType>(row: T, name: string) =>
  z.object({ items: z.array(row), nextCursor: NextCursor }).meta({ id: name });

export const NextCursor = z.string().nullable().meta({ description: 'Asks for the next page; `null` at the end.' });

/** Words that somebody types: trimmed, not empty, no control characters but line breaks. */
export const words = (max: number) =>
  z.string().trim().min(1, 'must not be empty').max(max).regex(PRINTABLE, 'must not contain control characters');

// biome-ignore lint/suspicious/noControlCharactersInRegex: naming them is the point
export const PRINTABLE = /^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]*$/;

/** An IANA time zone that this machine knows. */
export const TimeZone = z.string().max(60).refine(isTimeZone, 'must be an IANA time zone such as Europe/Oslo').meta({
  id: 'TimeZone',
  description: 'IANA zone of the vessel’s own place; decides what day it is there.',
  example: 'Europe/Oslo',
});

/** Names only: an offset such as `+02:00` means the opposite to some programs. */
function isTimeZone(name: string): boolean {
  if (!/^[A-Za-z]/.test(name)) return false;
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }) !== null;
  } catch {
    return false;
  }
}
