/** What every operation of a kind can answer although its route does not say so: it comes from around the routes. */
import type { ProblemType } from '@garboard/contract/problem.ts';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { ApiEnv } from '../deps.ts';
import { PROBLEMS } from '../problem/problem-table.ts';
import { exampleOf } from './declare.ts';

type Document = ReturnType<OpenAPIHono<ApiEnv>['getOpenAPI31Document']>;
type Operation = NonNullable<NonNullable<Document['paths']>[string]['get']>;

const METHODS = ['get', 'post', 'put', 'patch', 'delete'] as const;

export function withWhatAllHaveInCommon(document: Document): Document {
  for (const [address, path] of Object.entries(document.paths ?? {})) {
    for (const method of METHODS) if (path[method]) complete(path[method], address.startsWith('/v1/'));
    const read = path.get?.responses;
    if (read?.[200]?.headers?.ETag)
      read[304] = { description: 'The reader has this version already (`If-None-Match`).' };
  }
  return document;
}

/** Everything under `/v1` asks the database. */
function complete({ responses = {}, requestBody }: Operation, asksDatabase: boolean): void {
  if (requestBody) responses[408] = refusal('came-too-slowly');
  if (asksDatabase) responses[429] = refusal('too-many-requests', { 'Retry-After': RETRY_AFTER, ...RATE_LIMIT });
  if (asksDatabase) responses[503] = refusal('timed-out', { 'Retry-After': RETRY_AFTER });
}

const RETRY_AFTER = { description: 'After so many seconds it may work.', schema: { type: 'integer' }, example: 5 };

const RATE_LIMIT = {
  RateLimit: {
    description: 'What is left, and after how many seconds it begins anew; on every answer. A structured field.',
    schema: { type: 'string' },
    example: '"credential";r=0;t=21',
  },
  'RateLimit-Policy': {
    description: 'How many requests in how many seconds; on every answer. A structured field.',
    schema: { type: 'string' },
    example: '"credential";q=1200;w=60, "address";q=2400;w=60',
  },
};

function refusal(type: ProblemType, headers: Record<string, object> = {}) {
  return {
    description: `${PROBLEMS[type].title} (\`/problems/${type}\`).`,
    headers,
    content: {
      'application/problem+json': {
        schema: { $ref: '#/components/schemas/Problem' },
        examples: { [type]: { value: exampleOf(type) } },
      },
    },
  };
}
