/** POST /v1/vessels: puts a vessel on the register. */
import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import { NewVessel, Vessel } from '@garboard/contract/vessel/vessel.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext, read } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentVessel, toParticulars } from './present-vessel.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels',
  operationId: 'createVessel',
  tags: ['Vessels'],
  summary: 'Put a vessel on the register',
  description: 'For `owner` and `manager`. Without `timeZone` she keeps the organisation’s.',
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewVessel) },
  responses: {
    201: created(Vessel, 'The vessel as registered.'),
    ...WRITE_PROBLEMS,
  },
});

export function createVesselRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const vessel = c.req.valid('json');
    const { timeZone } = await read(c, deps, loadOrganisation);
    const result = await createVessel(actionContext(c, deps, vessel), toParticulars(vessel, timeZone));
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/vessels/${value.id}`, version: value.version, replayed });
    return c.json(presentVessel(value), 201);
  });
}
