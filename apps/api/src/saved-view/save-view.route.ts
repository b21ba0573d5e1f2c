/** POST /v1/saved-views: keeps a list's filters under a name. */
import { saveView } from '@garboard/actions/saved-view/save-view.ts';
import { NewSavedView, SavedView } from '@garboard/contract/saved-view/saved-view.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentSavedView } from './present-saved-view.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/saved-views',
  operationId: 'saveView',
  tags: ['Due list'],
  summary: 'Save a view',
  description:
    'For every role but `viewer`. A shared one is seen by everybody in the organisation, any other only by whoever saved it.',
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewSavedView) },
  responses: { 201: created(SavedView, 'The view as saved.'), ...WRITE_PROBLEMS },
});

export function saveViewRoute(deps: Deps) {
  const middleware = [access(deps, 'record_facts'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const view = c.req.valid('json');
    const result = await saveView(actionContext(c, deps, view), view);
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/saved-views/${value.id}`, version: value.version, replayed });
    return c.json(presentSavedView(value), 201);
  });
}
