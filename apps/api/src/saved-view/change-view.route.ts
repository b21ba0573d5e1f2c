/** PATCH /v1/saved-views/{viewId}: another name, other filters, shared or not. */
import { changeView } from '@garboard/actions/saved-view/change-view.ts';
import { SavedView, SavedViewChange } from '@garboard/contract/saved-view/saved-view.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  SavedViewPath,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { given } from '../request/given.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentSavedView } from './present-saved-view.ts';

const route = createRoute({
  method: 'patch',
  path: '/v1/saved-views/{viewId}',
  operationId: 'changeView',
  tags: ['Due list'],
  summary: 'Change a saved view',
  description:
    'For every role but `viewer`. What is absent stays; `filters` is replaced whole. No longer shared, it is the own one of whoever changed it. `If-Match` is required.',
  security: SIGNED_IN,
  request: {
    params: SavedViewPath,
    headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }),
    body: body(SavedViewChange),
  },
  responses: {
    200: changed(SavedView, 'The view as changed.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'stale', 'if-match-required'),
  },
});

export function changeViewRoute(deps: Deps) {
  const middleware = [access(deps, 'record_facts'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { viewId } = c.req.valid('param');
    const change = given(c.req.valid('json'));
    const known = { viewId, expectedVersion: ifMatch.version };
    const result = await changeView(actionContext(c, deps, change), { ...known, change });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentSavedView(result.value), 200);
  });
}
