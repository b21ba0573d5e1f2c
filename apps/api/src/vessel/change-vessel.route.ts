/** PATCH /v1/vessels/{vesselId}: changes her particulars. */
import { changeVessel } from '@garboard/actions/vessel/change-vessel.ts';
import { Vessel, VesselChange } from '@garboard/contract/vessel/vessel.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  SIGNED_IN,
  VesselPath,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentVessel, toChange } from './present-vessel.ts';

const route = createRoute({
  method: 'patch',
  path: '/v1/vessels/{vesselId}',
  operationId: 'changeVessel',
  tags: ['Vessels'],
  summary: 'Change a vessel’s particulars',
  description:
    'For `owner` and `manager`. What is absent stays; `null` takes it away. `If-Match` is required. New schemes bring their obligations at once.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(VesselChange) },
  responses: {
    200: changed(Vessel, 'The vessel as changed.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'stale', 'if-match-required'),
  },
});

export function changeVesselRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { vesselId } = c.req.valid('param');
    const change = c.req.valid('json');
    const context = actionContext(c, deps, change);
    const result = await changeVessel(context, {
      vesselId,
      expectedVersion: ifMatch.version,
      change: toChange(change),
    });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentVessel(result.value), 200);
  });
}
