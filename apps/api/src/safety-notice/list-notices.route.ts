/** GET /v1/safety-notices: the notices that were entered, the latest first. */
import { NoticeStateCode, SafetyNoticePage } from '@garboard/contract/safety-notice/notice.ts';
import { countAnswers } from '@garboard/db/safety-notice/count-answers.ts';
import { listNotices } from '@garboard/db/safety-notice/notices.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { DatedKey, pageQuery } from '../request/query-params.ts';
import { presentNotice } from './present-notice.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/safety-notices',
  operationId: 'listSafetyNotices',
  tags: ['Safety notices'],
  summary: 'List the safety notices',
  description:
    'By their day, the latest first; withdrawn ones stay. Each says how many things still wait for an answer.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ state: NoticeStateCode.optional(), ...pageQuery }) },
  responses: { 200: page(SafetyNoticePage, 'A page of notices.'), ...READ_PROBLEMS },
});

export function listNoticesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, state } = c.req.valid('query');
    const question = { list: 'safety-notices', state };
    const start = readCursor(cursor, question, DatedKey);
    if (!start.ok) return badCursor(c);
    const { rows, more, counts } = await read(c, deps, async (tx) => {
      const found = await listNotices(tx, {
        limit,
        ...(state && { state }),
        ...(start.after && { before: start.after }),
      });
      return {
        ...found,
        counts: await countAnswers(
          tx,
          found.rows.map(({ id }) => id),
        ),
      };
    });
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { on: last.issuedOn, id: last.id });
    return c.json({ items: rows.map((row) => presentNotice(row, counts(row.id))), nextCursor: next }, 200);
  });
}
