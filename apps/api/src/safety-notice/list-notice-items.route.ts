/** GET /v1/safety-notices/{noticeId}/items: every thing that it is about, and what was answered. */
import { NoticeItemPage } from '@garboard/contract/safety-notice/answer.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { readNoticeItems } from '@garboard/db/safety-notice/notice-items.ts';
import { toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { loadNotice } from '@garboard/db/safety-notice/notices.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { NoticePath, page, problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { asAt } from '../request/as-at.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { asAtQuery, IdKey, pageQuery } from '../request/query-params.ts';
import { presentNoticeItem } from './present-notice.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/safety-notices/{noticeId}/items',
  operationId: 'listNoticeItems',
  tags: ['Safety notices'],
  summary: 'List the things that a safety notice is about',
  description:
    'What still waits for an answer, and what was answered, with every answer given. Worked out from what is on record, so `asOf` and `knownAt` answer for any day and any knowledge. The day asked is, by default, today in the organisation’s time zone.',
  security: SIGNED_IN,
  request: { params: NoticePath, query: z.strictObject({ ...asAtQuery, ...pageQuery }) },
  responses: { 200: page(NoticeItemPage, 'A page of things.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listNoticeItemsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { noticeId } = c.req.valid('param');
    const { limit, cursor, ...asked } = c.req.valid('query');
    const question = { list: 'notice-items', noticeId, ...asked };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const after = start.after ? { after: start.after.id } : {};
    const found = await read(c, deps, async (tx) => {
      const notice = await loadNotice(tx, noticeId);
      if (!notice) return null;
      const at = await asAt(tx, asked, deps.now(), (await loadOrganisation(tx)).timeZone);
      const things = await readNoticeItems(tx, { notice: toNotice(notice), cut: at.cut ?? {}, limit, ...after });
      return { at, things };
    });
    if (!found) return problem(c, 'not-found');
    const things = found.things.slice(0, limit);
    const last = found.things.length > limit ? things.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.item.id });
    return c.json({ asOf: found.at.text, items: things.map(presentNoticeItem), nextCursor: next }, 200);
  });
}
