/** POST /v1/vessels/{vesselId}/visits: a survey visit begins. */
import { startVisit } from '@garboard/actions/survey-visit/start-visit.ts';
import { NewVisit, Visit } from '@garboard/contract/survey-visit/visit.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  created,
  IDEMPOTENCY_KEY,
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
import { presentVisit } from './present-visit.ts';
import { toDetail } from './to-visit.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/visits',
  operationId: 'startVisit',
  tags: ['Visits'],
  summary: 'Begin a survey visit',
  description:
    'For `owner`, `manager` and `surveyor`. The route is kept as it is on that day; every open finding and every limitation of hers stands on it.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewVisit) },
  responses: { 201: created(Visit, 'The visit.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function startVisitRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'survey'), ...jsonBody] }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const said = c.req.valid('json');
    const { craft, purpose, startedOn, ...about } = said;
    const wanted = { vesselId, craft, purpose, startedOn, detail: toDetail(about) };
    const result = await startVisit(actionContext(c, deps, said), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/visits/${value.id}`, version: value.version, replayed });
    return c.json(presentVisit(value), 201);
  });
}
