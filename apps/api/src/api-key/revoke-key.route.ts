/** POST /v1/api-keys/{keyId}/revocation: the key opens nothing from now on. */
import { revokeKey } from '@garboard/actions/api-key/revoke-key.ts';
import { ApiKey, ApiKeyRevocation } from '@garboard/contract/api-key/api-key.ts';
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
import { presentKey } from './present-key.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/api-keys/{keyId}/revocation',
  operationId: 'revokeApiKey',
  tags: ['Keys'],
  summary: 'Revoke a key',
  description:
    'The next request with it, old text or new, is refused like one with a key that never was. `If-Match` is required.',
  security: SIGNED_IN,
  request: {
    params: ApiKeyPath,
    headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }),
    body: body(ApiKeyRevocation),
  },
  responses: {
    200: changed(ApiKey, 'The key as revoked.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function revokeKeyRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'keep_keys'), ...jsonBody] }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { keyId } = c.req.valid('param');
    const { reason = null } = c.req.valid('json');
    const wanted = { keyId, expectedVersion: ifMatch.version, reason };
    const result = await revokeKey(actionContext(c, deps, { reason }), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentKey(result.value), 200);
  });
}
