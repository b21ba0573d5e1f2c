/** POST /v1/vessels/{vesselId}/events: what happened to her, or is planned. */
import { recordEvent } from '@garboard/actions/vessel/record-event.ts';
import { NewVesselEvent, VesselEvent } from '@garboard/contract/vessel/situation.ts';
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
import { presentEvent } from './present-situation.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/events',
  operationId: 'recordEvent',
  tags: ['Vessels'],
  summary: 'Record what happened to a vessel, or is planned',
  description:
    'For every role but `viewer`. A day ahead must say `planned`. Obligations that depend on it are right when this answers.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewVesselEvent) },
  responses: { 201: listed(VesselEvent, 'The event as recorded.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function recordEventRoute(deps: Deps) {
  const middleware = [access(deps, 'record_facts'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const event = c.req.valid('json');
    const result = await recordEvent(actionContext(c, deps, event), { vesselId, ...event, note: event.note ?? null });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { location: `/v1/vessels/${vesselId}/events`, replayed: result.replayed });
    return c.json(presentEvent(result.value), 201);
  });
}
