/** POST /v1/safety-notices: what it covers across the fleet owes an answer at once. */
import { enterNotice } from '@garboard/actions/safety-notice/enter-notice.ts';
import { NewSafetyNotice, SafetyNotice } from '@garboard/contract/safety-notice/notice.ts';
import { countAnswers } from '@garboard/db/safety-notice/count-answers.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext, read } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentNotice } from './present-notice.ts';
import { readNotice } from './read-notice.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/safety-notices',
  operationId: 'enterSafetyNotice',
  tags: ['Safety notices'],
  summary: 'Enter a maker’s safety notice',
  description: [
    'For `owner` and `manager` who may see the whole fleet. Everything aboard that it covers or may cover has an obligation when this answers; what is put aboard later is matched then.',
    'Makers and models are compared without case, spaces, punctuation and accents; serial numbers by the number that counts up, with what stands before and after it. What cannot be compared, or is not on record, *may* be affected: it is never left out.',
  ].join(' '),
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewSafetyNotice) },
  responses: { 201: created(SafetyNotice, 'The notice, with what it found.'), ...WRITE_PROBLEMS },
});

export function enterNoticeRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const asked = c.req.valid('json');
    const result = await enterNotice(actionContext(c, deps, asked), readNotice(asked));
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    const counts = await read(c, deps, (tx) => countAnswers(tx, [value.id]));
    tellWritten(c, { location: `/v1/safety-notices/${value.id}`, version: value.version, replayed });
    return c.json(presentNotice(value, counts(value.id)), 201);
  });
}
