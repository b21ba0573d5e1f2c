/** GET /v1/visits/{visitId}: one attendance aboard. */
import { Visit } from '@garboard/contract/survey-visit/visit.ts';
import { loadVisit } from '@garboard/db/survey-visit/visits.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, routes, SIGNED_IN, VisitPath, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentVisit } from './present-visit.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/visits/{visitId}',
  operationId: 'getVisit',
  tags: ['Visits'],
  summary: 'Read a visit',
  description: 'What it says place by place is at `…/walk`.',
  security: SIGNED_IN,
  request: { params: VisitPath },
  responses: { 200: versioned(Visit, 'The visit.'), ...READ_ONE_PROBLEMS },
});

export function getVisitRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { visitId } = c.req.valid('param');
    const visit = await read(c, deps, (tx) => loadVisit(tx, visitId));
    if (!visit) return problem(c, 'not-found');
    tellWritten(c, { version: visit.version });
    return c.json(presentVisit(visit), 200);
  });
}
