/** GET /v1/visits/{visitId}/walk: the route with what each place has open and what the visit has said. */
import { loadWalk } from '@garboard/actions/survey-visit/walk-of-visit.ts';
import { Walk } from '@garboard/contract/survey-visit/walk.ts';
import { loadVisit } from '@garboard/db/survey-visit/visits.ts';
import { loadPoints } from '@garboard/db/survey-visit/walked.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, READ_ONE_PROBLEMS, routes, SIGNED_IN, VisitPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { presentWalk } from './present-walk.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/visits/{visitId}/walk',
  operationId: 'getWalk',
  tags: ['Visits'],
  summary: 'Read the route of a visit, place by place',
  description:
    'With every open finding and limitation where it lies, what was answered, and what keeps the visit from being completed.',
  security: SIGNED_IN,
  request: { params: VisitPath },
  responses: { 200: json(Walk, 'The route.'), ...READ_ONE_PROBLEMS },
});

export function getWalkRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { visitId } = c.req.valid('param');
    const walked = await read(c, deps, async (tx) => {
      const visit = await loadVisit(tx, visitId);
      return visit && { visit, walk: await loadWalk(tx, visit), points: await loadPoints(tx, visit.vesselId) };
    });
    if (!walked) return problem(c, 'not-found');
    return c.json(presentWalk(walked.visit, walked.walk, walked.points), 200);
  });
}
