/** GET /v1/saved-views/{viewId}: one view. */
import { SavedView } from '@garboard/contract/saved-view/saved-view.ts';
import { loadSavedView } from '@garboard/db/saved-view/saved-views.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, routes, SavedViewPath, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentSavedView } from './present-saved-view.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/saved-views/{viewId}',
  operationId: 'getSavedView',
  tags: ['Due list'],
  summary: 'Read one saved view',
  description: 'Somebody else’s own view is not here, like one that never was.',
  security: SIGNED_IN,
  request: { params: SavedViewPath },
  responses: { 200: versioned(SavedView, 'The view.'), ...READ_ONE_PROBLEMS },
});

export function getSavedViewRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { viewId } = c.req.valid('param');
    const view = await read(c, deps, (tx) => loadSavedView(tx, viewId, callerOf(c).actor.id));
    if (!view || view.removedAt !== null) return problem(c, 'not-found');
    tellWritten(c, { version: view.version });
    return c.json(presentSavedView(view), 200);
  });
}
