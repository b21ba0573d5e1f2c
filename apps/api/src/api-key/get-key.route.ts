/** GET /v1/api-keys/{keyId}. */
import { ApiKey } from '@garboard/contract/api-key/api-key.ts';
import { loadApiKey } from '@garboard/db/api-key/api-keys.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ApiKeyPath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { etagOf } from '../request/etag.ts';
import { presentKey } from './present-key.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/api-keys/{keyId}',
  operationId: 'getApiKey',
  tags: ['Keys'],
  summary: 'Read one key',
  description: 'What it may do, until when, and when it was last used; never its text. For `owner` and `manager`.',
  security: SIGNED_IN,
  request: { params: ApiKeyPath },
  responses: { 200: versioned(ApiKey, 'The key.'), ...READ_ONE_PROBLEMS },
});

export function getKeyRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'keep_keys') }, async (c) => {
    const key = await read(c, deps, (tx) => loadApiKey(tx, c.req.valid('param').keyId));
    if (!key) return problem(c, 'not-found');
    c.header('etag', etagOf(key.version));
    return c.json(presentKey(key), 200);
  });
}
