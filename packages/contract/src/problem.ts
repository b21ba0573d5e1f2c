/** The one shape of every error that the API answers with: RFC 9457 problem details. */
import * as z from 'zod';

export const PROBLEM_TYPES = [
  'unreadable-request',
  'malformed-json',
  'unauthenticated',
  'forbidden',
  'foreign-origin',
  'not-found',
  'file-missing',
  'method-not-allowed',
  'came-too-slowly',
  'conflict',
  'stale',
  'too-large',
  'unsupported-media-type',
  'invalid',
  'idempotency-key-reused',
  'if-match-required',
  'too-many-requests',
  'headers-too-large',
  'fault',
  'timed-out',
  'not-ready',
] as const;
export type ProblemType = (typeof PROBLEM_TYPES)[number];

export const Fault = z
  .object({
    pointer: z.string().meta({
      description: 'RFC 6901 pointer into the body; `#query/asOf` and `#header/If-Match` name a parameter or a header.',
      example: '/on',
    }),
    detail: z.string().meta({ example: 'must be a day, a month or a year: 2024-03-18, 2024-03 or 2024' }),
  })
  .meta({ id: 'Fault' });
export type Fault = z.infer<typeof Fault>;

export const Problem = z
  .object({
    type: z
      .string()
      .meta({ description: 'Resolves to a page that says what it means.', example: '/problems/not-found' }),
    title: z.string().meta({ example: 'No such thing here' }),
    status: z.int().meta({ example: 404 }),
    detail: z.string().optional(),
    instance: z
      .string()
      .optional()
      .meta({ description: 'The request id, as in `X-Request-Id`.', example: '6f1f2a52-7c57-4c3e-9d1b-3a4d5c6e7f80' }),
    errors: z.array(Fault).optional().meta({ description: 'Every fault at once.' }),
  })
  .meta({ id: 'Problem', description: 'RFC 9457 problem details.' });
export type Problem = z.infer<typeof Problem>;
