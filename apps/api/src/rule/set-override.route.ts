/** POST /v1/vessels/{vesselId}/overrides: a figure of one's own in place of a published interval. */
import { setOverride } from '@garboard/actions/rule/set-override.ts';
import { NewOverride, Override } from '@garboard/contract/rule/override.ts';
import type { PeriodText } from '@garboard/domain/rule/rule.ts';
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
import { presentOverride } from './present-override.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/overrides',
  operationId: 'setOverride',
  tags: ['Catalogue'],
  summary: 'Put your own figure in place of a published interval',
  description:
    'For `owner` and `manager`. Advice gives way to the figure; law and a certificate’s terms can be tightened, never loosened, and stay on the list beside it. The obligation carries the figure’s weight, and its explanation says who, when, why and the published figure.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewOverride) },
  responses: { 201: created(Override, 'The figure as set.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function setOverrideRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const { itemId = null, ...figure } = c.req.valid('json');
    const period = figure.period as PeriodText;
    const asked = actionContext(c, deps, { itemId, ...figure });
    const result = await setOverride(asked, { ...figure, vesselId, itemId, period });
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/overrides/${value.id}`, version: value.version, replayed });
    return c.json(presentOverride(value), 201);
  });
}
