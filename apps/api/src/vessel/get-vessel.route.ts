/** GET /v1/vessels/{vesselId}: one boat and her particulars. */
import { Vessel } from '@garboard/contract/vessel/vessel.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, routes, SIGNED_IN, VesselPath, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentVessel } from './present-vessel.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessels/{vesselId}',
  operationId: 'getVessel',
  tags: ['Vessels'],
  summary: 'Read one vessel',
  description: 'Her particulars. What is not known is absent.',
  security: SIGNED_IN,
  request: { params: VesselPath },
  responses: { 200: versioned(Vessel, 'The vessel.'), ...READ_ONE_PROBLEMS },
});

export function getVesselRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const vessel = await read(c, deps, (tx) => loadVessel(tx, vesselId));
    if (!vessel) return problem(c, 'not-found');
    tellWritten(c, { version: vessel.version });
    return c.json(presentVessel(vessel), 200);
  });
}
