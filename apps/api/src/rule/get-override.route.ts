/** GET /v1/overrides/{overrideId}: one figure of one's own. */
import { Override } from '@garboard/contract/rule/override.ts';
import { loadOverride } from '@garboard/db/rule/overrides.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { OverridePath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentOverride } from './present-override.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/overrides/{overrideId}',
  operationId: 'getOverride',
  tags: ['Catalogue'],
  summary: 'Read one figure of your own',
  description: 'Who set it, when, why and by which document; and how it ended, if it has.',
  security: SIGNED_IN,
  request: { params: OverridePath },
  responses: { 200: versioned(Override, 'The figure.'), ...READ_ONE_PROBLEMS },
});

export function getOverrideRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { overrideId } = c.req.valid('param');
    const override = await read(c, deps, (tx) => loadOverride(tx, overrideId));
    if (!override) return problem(c, 'not-found');
    tellWritten(c, { version: override.version });
    return c.json(presentOverride(override), 200);
  });
}
