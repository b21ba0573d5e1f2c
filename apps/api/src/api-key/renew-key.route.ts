/** POST /v1/api-keys/{keyId}/renewal: a new text; the old one goes on for a while. */
import { renewKey } from '@garboard/actions/api-key/renew-key.ts';
import { ApiKeyRenewal, ApiKeyWithText } from '@garboard/contract/api-key/api-key.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  ApiKeyPath,
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentKeyWithText } from './present-key.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/api-keys/{keyId}/renewal',
  operationId: 'renewApiKey',
  tags: ['Keys'],
  summary: 'Give a key a new text',
  description:
    'The text before works beside it for the hours asked for, so that no program has to stop; never longer than it was made for. The answer tells the new text, this once. `If-Match` is required.',
  security: SIGNED_IN,
  request: { params: ApiKeyPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(ApiKeyRenewal) },
  responses: {
    200: changed(ApiKeyWithText, 'The key, with its new text.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function renewKeyRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'keep_keys'), ...jsonBody] }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { keyId } = c.req.valid('param');
    const asked = c.req.valid('json');
    const { overlapHours, expiresAt } = asked;
    const wanted = { keyId, expectedVersion: ifMatch.version, overlapHours, expiresAt: new Date(expiresAt) };
    const result = await renewKey(actionContext(c, deps, asked), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.key.version, replayed: result.replayed });
    return c.json(presentKeyWithText(result.value), 200);
  });
}
