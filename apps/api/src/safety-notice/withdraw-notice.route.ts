/** POST /v1/safety-notices/{noticeId}/withdrawal: it asks nothing more from today on. */
import { withdrawNotice } from '@garboard/actions/safety-notice/withdraw-notice.ts';
import { NewNoticeWithdrawal, SafetyNotice } from '@garboard/contract/safety-notice/notice.ts';
import { countAnswers } from '@garboard/db/safety-notice/count-answers.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  NoticePath,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext, read } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentNotice } from './present-notice.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/safety-notices/{noticeId}/withdrawal',
  operationId: 'withdrawSafetyNotice',
  tags: ['Safety notices'],
  summary: 'Withdraw a safety notice',
  description:
    'For `owner` and `manager` who may see the whole fleet: its publisher took it back, or it was entered in error. Every obligation of it ends today; what was owed and answered until then stays known. `If-Match` is required.',
  security: SIGNED_IN,
  request: {
    params: NoticePath,
    headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }),
    body: body(NewNoticeWithdrawal),
  },
  responses: {
    200: changed(SafetyNotice, 'The notice as withdrawn.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function withdrawNoticeRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { noticeId } = c.req.valid('param');
    const { reason } = c.req.valid('json');
    const expectedVersion = ifMatch.version;
    const result = await withdrawNotice(actionContext(c, deps, { reason }), { noticeId, expectedVersion, reason });
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    const counts = await read(c, deps, (tx) => countAnswers(tx, [value.id]));
    tellWritten(c, { version: value.version, replayed });
    return c.json(presentNotice(value, counts(value.id)), 200);
  });
}
