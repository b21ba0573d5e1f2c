/** GET /v1/limitations/{limitationId}. */
import { Limitation } from '@garboard/contract/survey-visit/walk.ts';
import { loadLimitation } from '@garboard/db/survey-visit/limitations.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { LimitationPath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentLimitation } from './present-visit.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/limitations/{limitationId}',
  operationId: 'getLimitation',
  tags: ['Visits'],
  summary: 'Read a limitation',
  description: 'With the version that a change of it must name.',
  security: SIGNED_IN,
  request: { params: LimitationPath },
  responses: { 200: versioned(Limitation, 'The limitation.'), ...READ_ONE_PROBLEMS },
});

export function getLimitationRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limitationId } = c.req.valid('param');
    const record = await read(c, deps, (tx) => loadLimitation(tx, limitationId));
    if (!record) return problem(c, 'not-found');
    tellWritten(c, { version: record.version });
    return c.json(presentLimitation(record), 200);
  });
}
