/** GET /v1/safety-notices/{noticeId}: one notice, with how many things still wait. */
import { SafetyNotice } from '@garboard/contract/safety-notice/notice.ts';
import { countAnswers } from '@garboard/db/safety-notice/count-answers.ts';
import { loadNotice } from '@garboard/db/safety-notice/notices.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { NoticePath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentNotice } from './present-notice.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/safety-notices/{noticeId}',
  operationId: 'getSafetyNotice',
  tags: ['Safety notices'],
  summary: 'Read one safety notice',
  description: 'What it says and how many things still wait for an answer; which ones, `…/items` says.',
  security: SIGNED_IN,
  request: { params: NoticePath },
  responses: { 200: versioned(SafetyNotice, 'The notice.'), ...READ_ONE_PROBLEMS },
});

export function getNoticeRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { noticeId } = c.req.valid('param');
    const found = await read(c, deps, async (tx) => {
      const notice = await loadNotice(tx, noticeId);
      return notice && { notice, counts: await countAnswers(tx, [noticeId]) };
    });
    if (!found) return problem(c, 'not-found');
    tellWritten(c, { version: found.notice.version });
    return c.json(presentNotice(found.notice, found.counts(noticeId)), 200);
  });
}
