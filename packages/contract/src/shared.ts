/** The shapes that every resource of the API is made of. */
import * as z from 'zod';

export const Id = z.uuid().meta({ id: 'Id', description: 'UUIDv7.', example: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a' });

export const CalendarDay = z.iso
  .date()
  .meta({ id: 'CalendarDay', description: 'A day, `YYYY-MM-DD`, in the vessel’s own place.', example: '2027-03-18' });

export const RecordedDate = z
  .string()
  .regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024')
  .meta({ id: 'RecordedDate', description: 'A date as written down: to the day, the month or the year.', example: '2024-03' });

export const Instant = z.iso
  .datetime({ offset: true })
  .meta({ id: 'Instant', description: 'RFC 3339 with offset.', example: '2026-11-25T08:12:00Z' });

export const Duration = z
  .string()
  .regex(/^P(?!$)(\d+Y)?(\d+M)?(\d+W)?(\d+D)?$/, 'must be an ISO 8601 duration such as P3Y or P42M')
  .meta({ id: 'Duration', example: 'P42M' });

export const Money = z
  .strictObject({
    amount: z.string().regex(/^-?\d{1,13}(\.\d{1,2})?$/, 'must be a decimal number such as 1234.50'),
    currency: z.string().regex(/^[A-Z]{3}$/, 'must be an ISO 4217 code'),
  })
  .meta({ id: 'Money', example: { amount: '1234.50', currency: 'EUR' } });

/** One page of a list: the rows, and the cursor of the next page or `null` at the end. */
export const pageOf = <T extends z.ZodType>(row: T, name: string) =>
  z.object({ items: z.array(row), nextCursor: z.string().nullable() }).meta({ id: name });

/** Words that somebody types: trimmed, not empty, no control characters but line breaks. */
export const words = (max: number) =>
  z
    .string()
    .trim()
    .min(1, 'must not be empty')
    .max(max)
    // biome-ignore lint/suspicious/noControlCharactersInRegex: naming them is the point
    .regex(/^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]*$/u, 'must not contain control characters');
