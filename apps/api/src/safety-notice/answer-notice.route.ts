/** POST /v1/safety-notices/{noticeId}/items/{itemId}/answers: what was done about it on one thing. */

import { answerNotice } from '@garboard/actions/safety-notice/answer-notice.ts';
import type { AnswerInput } from '@garboard/actions/safety-notice/answered-item.ts';
import {
  AnsweredNotice,
  type NewNoticeAnswer,
  NewNoticeAnswer as Shape,
} from '@garboard/contract/safety-notice/answer.ts';
import { dayOfText } from '@garboard/domain/calendar/day.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { byOverdueAfter, presentObligation } from '../item/present-obligation.ts';
import {
  body,
  IDEMPOTENCY_KEY,
  listed,
  NoticeItemPath,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { given } from '../request/given.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentAnswer } from './present-notice.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/safety-notices/{noticeId}/items/{itemId}/answers',
  operationId: 'answerSafetyNotice',
  tags: ['Safety notices'],
  summary: 'Answer a safety notice for one thing',
  description: [
    'For every role but `viewer`. Answers are only ever added; a wrong one is struck out by another that names it in `corrects`. An answer is an addition, so `If-Match` is not asked for.',
    'A serial number that was read is written on the item, and a replacement is recorded as a fact, in the same transaction. What is asked before the next use cannot be put off.',
  ].join(' '),
  security: SIGNED_IN,
  request: { params: NoticeItemPath, headers: z.object(IDEMPOTENCY_KEY), body: body(Shape) },
  responses: {
    201: listed(AnsweredNotice, 'The answer, and what the item still owes.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict'),
  },
});

export function answerNoticeRoute(deps: Deps) {
  const middleware = [access(deps, 'record_facts'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { noticeId, itemId } = c.req.valid('param');
    const asked = c.req.valid('json');
    const result = await answerNotice(actionContext(c, deps, asked), { noticeId, itemId, answer: toInput(asked) });
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    const asOf = dayOfText(value.asOf);
    tellWritten(c, { location: `/v1/safety-notices/${noticeId}/items`, replayed });
    return c.json(
      {
        answer: presentAnswer(value.answer, []),
        asOf: value.asOf,
        obligations: [...value.obligations].sort(byOverdueAfter).map((each) => presentObligation(each, asOf)),
      },
      201,
    );
  });
}

function toInput(asked: NewNoticeAnswer): AnswerInput {
  return {
    ...asked,
    doneBy: given(asked.doneBy),
    evidence: asked.evidence ?? null,
    reference: asked.reference ?? null,
    note: asked.note ?? null,
    until: asked.until ?? null,
    serialRead: asked.serialRead ?? null,
    corrects: asked.corrects ?? null,
  };
}
