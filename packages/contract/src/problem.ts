/** The one shape of every error that the API answers with: RFC 9457 problem details. */
import * as z from 'zod';

export const PROBLEM_TYPES = [
  'malformed-json',
  'unauthenticated',
  'forbidden',
  'not-found',
  'method-not-allowed',
  'conflict',
  'stale',
  'too-large',
  'unsupported-media-type',
  'invalid',
  'idempotency-key-reused',
  'if-match-required',
  'fault',
  'not-ready',
] as const;
export type ProblemType = (typeof PROBLEM_TYPES)[number];

export const Fault = z.object({
  pointer: z.string().meta({ description: 'RFC 6901 pointer into the body, or the name of a query parameter or header after `#`.', example: '/on' }),
  detail: z.string().meta({ example: 'must be a day, a month or a year' }),
});
export type Fault = z.infer<typeof Fault>;

export const Problem = z
  .object({
    type: z.string().meta({ description: 'Resolves to a page of docs.', example: '/problems/not-found' }),
    title: z.string().meta({ example: 'No such thing here' }),
    status: z.int(),
    detail: z.string().optional(),
    instance: z.string().optional().meta({ description: 'The request id.' }),
    errors: z.array(Fault).optional().meta({ description: 'Every fault at once.' }),
  })
  .meta({ id: 'Problem' });
export type Problem = z.infer<typeof Problem>;
