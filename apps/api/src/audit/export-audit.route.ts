/** GET /v1/audit/export: the whole chain as it can be checked, a row a line. */
import { loadChained } from '@garboard/db/audit/read-chain.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ApiEnv, Deps } from '../deps.ts';
import { problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { wholeNumber } from '../request/query-params.ts';
import { ofWholeFleet } from './whole-fleet.ts';

/** No literal type: the routes' types would take it for one JSON value. */
const NDJSON: string = 'application/x-ndjson';
const BATCH = 500;

const after = wholeNumber({ min: 0, max: 999_999_999 })
  .default(0)
  .meta({ description: 'Only rows after this `sequence`; 0 if not given.', default: 0, example: 0 });

const Lines = z.string().meta({
  example:
    '{"id":"0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d","verb":"change_vessel","sequence":17,"previous":"…","hash":"…"}\n',
});

const route = createRoute({
  method: 'get',
  path: '/v1/audit/export',
  operationId: 'exportAudit',
  tags: ['Audit'],
  summary: 'Take the audit away',
  description: [
    'Every row of the chain in its order, one JSON object a line, up to the last at the moment of asking.',
    'To check it: take `hash` out of a row, write the rest as in RFC 8785, and its SHA-256 is `hash`;',
    '`previous` is the `hash` of the row before, `sequence` counts from 1 without gaps.',
    'Rows from before there was a chain are only in `GET /v1/audit`.',
  ].join(' '),
  security: SIGNED_IN,
  request: { query: z.strictObject({ after }) },
  responses: {
    200: { description: 'The chain, a row a line.', content: { [NDJSON]: { schema: Lines } } },
    ...READ_PROBLEMS,
    ...problems('forbidden'),
  },
});

export function exportAuditRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'read_audit'), ofWholeFleet] as const }, async (c) => {
    const first = await batch(c, deps, c.req.valid('query').after);
    c.header('content-disposition', 'attachment; filename="audit.ndjson"');
    return c.body(lines(c, deps, first), 200, { 'content-type': NDJSON });
  });
}

type Batch = Awaited<ReturnType<typeof loadChained>>;

/** A transaction a batch: rows are never changed, so a slow reader holds no connection. */
const batch = (c: Context<ApiEnv>, deps: Deps, after: number) =>
  read(c, deps, (tx) => loadChained(tx, callerOf(c).organisationId, after, BATCH));

function lines(c: Context<ApiEnv>, deps: Deps, first: Batch): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  let waiting = first;
  return new ReadableStream({
    async pull(controller) {
      const last = waiting.at(-1);
      if (last) controller.enqueue(encoder.encode(waiting.map((row) => `${JSON.stringify(row)}\n`).join('')));
      if (!last || waiting.length < BATCH) return controller.close();
      waiting = await batch(c, deps, last.sequence);
    },
  });
}
