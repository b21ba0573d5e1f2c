/** POST /v1/vessels/{vesselId}/situations: what she is doing, from a day on. */
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import { NewSituation, Situation } from '@garboard/contract/vessel/situation.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  IDEMPOTENCY_KEY,
  listed,
  problems,
  routes,
  SIGNED_IN,
  VesselPath,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentSituation } from './present-situation.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/situations',
  operationId: 'recordSituation',
  tags: ['Vessels'],
  summary: 'State what a vessel is doing',
  description:
    'For `owner` and `manager`. It holds from the day `from` until the next one begins; earlier situations stay on record.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewSituation) },
  responses: { 201: listed(Situation, 'The situation as recorded.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function recordSituationRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const situation = c.req.valid('json');
    const result = await recordSituation(actionContext(c, deps, situation), { vesselId, ...situation });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { location: `/v1/vessels/${vesselId}/situations`, replayed: result.replayed });
    return c.json(presentSituation(result.value), 201);
  });
}
