/** Parameters that many lists take. Unknown ones are refused: a misspelt filter must not look like an answer. */
import { AskedDay, CalendarDay, Id, Instant } from '@garboard/contract/shared.ts';
import { z } from '@hono/zod-openapi';

/**
 * A whole number in a query string.
 *
 * Not `z.coerce.number()`: that one reads the empty text in `?limit=` as 0.
 */
export const wholeNumber = ({ min, max }: { min: number; max: number }) =>
  z
    .string()
    .regex(/^\d{1,9}$/, { error: `must be a whole number from ${min} to ${max}`, abort: true })
    .transform(Number)
    .pipe(z.int().min(min, `must be at least ${min}`).max(max, `must be at most ${max}`))
    .openapi({ type: 'integer', minimum: min, maximum: max });

export const pageQuery = {
  limit: wholeNumber({ min: 1, max: 200 })
    .default(50)
    .meta({ description: 'Rows a page, 1 to 200; 50 if not given.', default: 50, example: 50 }),
  cursor: z
    .string()
    .max(2000)
    .optional()
    .meta({ description: '`nextCursor` of the page before, with the same filters.' }),
};

export const asAtQuery = {
  asOf: AskedDay.optional().meta({
    description: 'The day asked about. Default: today in the vessel’s place.',
    example: '2026-11-25',
  }),
  knownAt: Instant.optional().meta({
    description: 'Only what was on record at this instant. Default: everything.',
    example: '2026-11-25T08:12:00Z',
  }),
};

/** Keys of lists in the order of a day, and of lists in the order of an id. */
export const DatedKey = z.object({ on: CalendarDay, id: Id });
export const IdKey = z.object({ id: Id });
