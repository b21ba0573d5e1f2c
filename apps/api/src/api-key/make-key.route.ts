/** POST /v1/api-keys: a key for a program. */
import { makeKey } from '@garboard/actions/api-key/make-key.ts';
import { ApiKeyWithText, NewApiKey } from '@garboard/contract/api-key/api-key.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { toVessels } from '../organisation/present-people.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentKeyWithText } from './present-key.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/api-keys',
  operationId: 'makeApiKey',
  tags: ['Keys'],
  summary: 'Make a key for a program',
  description:
    'For `owner` and `manager`; nobody makes a key that may more than they may themselves. The answer tells the text of the key, this once.',
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewApiKey) },
  responses: { 201: created(ApiKeyWithText, 'The key, with its text.'), ...WRITE_PROBLEMS },
});

export function makeKeyRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'keep_keys'), ...jsonBody] }, async (c) => {
    const asked = c.req.valid('json');
    const { name, role, permissions, vesselIds, expiresAt } = asked;
    const grant = { role, permissions: permissions ?? ('all' as const), vesselIds: toVessels(vesselIds) };
    const wanted = { ...grant, name, expiresAt: new Date(expiresAt) };
    const result = await makeKey(actionContext(c, deps, asked), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    const { id, version } = result.value.key;
    tellWritten(c, { location: `/v1/api-keys/${id}`, version, replayed: result.replayed });
    return c.json(presentKeyWithText(result.value), 201);
  });
}
