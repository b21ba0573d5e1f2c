/** POST /v1/shared/look: what a link shows, to whoever has it. */
import { lookAtShared } from '@garboard/actions/share/look-at-shared.ts';
import { SharedToken, SharedView } from '@garboard/contract/share/share-link.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ANYBODY, body, IDEMPOTENCY_KEY, json, problems, routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { jsonBody } from '../request/json-body.ts';
import { presentShared } from './present-share.ts';

const LONGEST_AGENT = 200;

const route = createRoute({
  method: 'post',
  path: '/v1/shared/look',
  operationId: 'lookAtShared',
  tags: ['Links for outsiders'],
  summary: 'Look at what a link shows',
  description:
    'For whoever has the link. Unknown, revoked and run out look alike. Each look is written down, so a repeat is another look and `Idempotency-Key` has no effect. The text goes in the body: an address is kept in too many places.',
  'x-secret-in-body': true,
  security: ANYBODY,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(SharedToken) },
  responses: {
    200: json(SharedView, 'What it shows, as it stands now.'),
    ...problems('malformed-json', 'not-found', 'too-large', 'unsupported-media-type', 'invalid', 'fault'),
  },
});

export function lookAtSharedRoute({ pools, now }: Deps) {
  return routes().openapi({ ...route, middleware: [...jsonBody] }, async (c) => {
    c.header('cache-control', 'no-store');
    const userAgent = c.req.header('user-agent')?.slice(0, LONGEST_AGENT) ?? null;
    const seen = await lookAtShared({ db: pools.app, text: c.req.valid('json').token, now: now(), userAgent });
    return seen ? c.json(presentShared(seen), 200) : problem(c, 'not-found');
  });
}
