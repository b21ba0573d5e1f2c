/** GET and PUT /v1/survey-routes/{craft}: in which order a sort of boat is walked. */
import { setRoute } from '@garboard/actions/survey-visit/set-route.ts';
import { SurveyRoute } from '@garboard/contract/survey-visit/visit.ts';
import { loadRoute } from '@garboard/db/survey-visit/routes.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  CraftPath,
  changed,
  IF_MATCH,
  problems,
  READ_ONE_PROBLEMS,
  routes,
  SIGNED_IN,
  versioned,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext, read } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';

const getRoute = createRoute({
  method: 'get',
  path: '/v1/survey-routes/{craft}',
  operationId: 'getSurveyRoute',
  tags: ['Visits'],
  summary: 'Read the route of a sort of boat',
  description: 'The organisation’s own, or the house route: common practice, no source.',
  security: SIGNED_IN,
  request: { params: CraftPath },
  responses: { 200: versioned(SurveyRoute, 'The route.'), ...READ_ONE_PROBLEMS },
});

export function getSurveyRouteRoute(deps: Deps) {
  return routes().openapi({ ...getRoute, middleware: access(deps, 'read') }, async (c) => {
    const { craft } = c.req.valid('param');
    const { zones, version } = await read(c, deps, (tx) => loadRoute(tx, craft));
    tellWritten(c, { version });
    return c.json({ zones: zones.map(({ zone, name }) => ({ zone, name })) }, 200);
  });
}

const setRouteRoute = createRoute({
  method: 'put',
  path: '/v1/survey-routes/{craft}',
  operationId: 'setSurveyRoute',
  tags: ['Visits'],
  summary: 'Set the route of a sort of boat',
  description:
    'For `owner`, `manager` and `surveyor`. Visits that have begun keep the route they walk. `If-Match` is required.',
  security: SIGNED_IN,
  request: { params: CraftPath, headers: z.object(IF_MATCH), body: body(SurveyRoute) },
  responses: {
    200: changed(SurveyRoute, 'The route as set.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'stale', 'if-match-required'),
  },
});

export function setSurveyRouteRoute(deps: Deps) {
  return routes().openapi({ ...setRouteRoute, middleware: [access(deps, 'survey'), ...jsonBody] }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { craft } = c.req.valid('param');
    const said = c.req.valid('json');
    const result = await setRoute(actionContext(c, deps, said), { craft, ...said, expectedVersion: ifMatch.version });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json({ zones: result.value.zones.map(({ zone, name }) => ({ zone, name })) }, 200);
  });
}
