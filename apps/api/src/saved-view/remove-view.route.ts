/** DELETE /v1/saved-views/{viewId}, and POST …/restoration, which undoes it. */
import { removeView, restoreView } from '@garboard/actions/saved-view/change-view.ts';
import { SavedView } from '@garboard/contract/saved-view/saved-view.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { changed, IDEMPOTENCY_KEY, IF_MATCH, problems, routes, SavedViewPath, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { tellWritten } from '../request/written.ts';
import { presentSavedView } from './present-saved-view.ts';

const inCommon = {
  tags: ['Due list'],
  security: SIGNED_IN,
  request: { params: SavedViewPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }) },
};
const refusals = problems(
  ...(['unauthenticated', 'forbidden', 'not-found', 'stale'] as const),
  ...(['idempotency-key-reused', 'if-match-required', 'fault'] as const),
);

const removal = createRoute({
  ...inCommon,
  method: 'delete',
  path: '/v1/saved-views/{viewId}',
  operationId: 'removeView',
  summary: 'Remove a saved view',
  description: 'For every role but `viewer`. `If-Match` is required. It can be brought back: see the restoration.',
  responses: { 200: changed(SavedView, 'The view as it was; its `ETag` is what a restoration needs.'), ...refusals },
});

const restoration = createRoute({
  ...inCommon,
  method: 'post',
  path: '/v1/saved-views/{viewId}/restoration',
  operationId: 'restoreView',
  summary: 'Bring a removed view back',
  description:
    'For every role but `viewer`. Under the address that it had. `If-Match` is required. One that was not removed stays as it is.',
  responses: { 200: changed(SavedView, 'The view as it is again.'), ...refusals },
});

export const removeViewRoute = (deps: Deps) => answering(deps, removal, removeView);
export const restoreViewRoute = (deps: Deps) => answering(deps, restoration, restoreView);

function answering(deps: Deps, route: typeof removal | typeof restoration, act: typeof removeView) {
  return routes().openapi({ ...route, middleware: access(deps, 'record_facts') }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { viewId } = c.req.valid('param');
    const result = await act(actionContext(c, deps, null), { viewId, expectedVersion: ifMatch.version });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentSavedView(result.value), 200);
  });
}
