/** POST /v1/vessels/{vesselId}/findings: something aboard is not right. */
import { enterFinding } from '@garboard/actions/finding/enter-finding.ts';
import { Finding, NewFinding } from '@garboard/contract/finding/finding.ts';
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
import { presentFinding } from './present-finding.ts';
import { toFound } from './to-entry.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/findings',
  operationId: 'enterFinding',
  tags: ['Findings'],
  summary: 'Enter something that is not right',
  description:
    'For every role but `viewer`. Ask `…/findings/alike` first: what is on record already is better seen again than entered twice. Its urgency gives it a date.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewFinding) },
  responses: { 201: created(Finding, 'The finding.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function enterFindingRoute(deps: Deps) {
  const middleware = [access(deps, 'answer_findings'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const said = c.req.valid('json');
    const { on, ...found } = said;
    const result = await enterFinding(actionContext(c, deps, said), { vesselId, on, found: toFound(found) });
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/findings/${value.id}`, version: value.version, replayed });
    return c.json(presentFinding(value, deps.now()), 201);
  });
}
