/** POST /v1/overrides/{overrideId}/ending: from today on the published figure counts again. */
import { endOverride } from '@garboard/actions/rule/end-override.ts';
import { NewOverrideEnding, Override } from '@garboard/contract/rule/override.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  OverridePath,
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
import { presentOverride } from './present-override.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/overrides/{overrideId}/ending',
  operationId: 'endOverride',
  tags: ['Catalogue'],
  summary: 'End a figure of your own',
  description:
    'For `owner` and `manager`. It counts no more from today at the vessel’s place; what counted before stays as it was. `If-Match` is required.',
  security: SIGNED_IN,
  request: {
    params: OverridePath,
    headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }),
    body: body(NewOverrideEnding),
  },
  responses: {
    200: changed(Override, 'The figure as ended.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function endOverrideRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { overrideId } = c.req.valid('param');
    const { reason } = c.req.valid('json');
    const result = await endOverride(actionContext(c, deps, { reason }), {
      overrideId,
      expectedVersion: ifMatch.version,
      reason,
    });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentOverride(result.value), 200);
  });
}
