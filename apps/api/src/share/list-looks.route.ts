/** GET /v1/share-links/{linkId}/looks: when somebody looked. */
import { LookPage } from '@garboard/contract/share/share-link.ts';
import { listLooks, loadShareLink } from '@garboard/db/share/share-links.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, problems, READ_PROBLEMS, routes, ShareLinkPath, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { withoutNulls } from '../request/without-nulls.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/share-links/{linkId}/looks',
  operationId: 'listLooksAtLink',
  tags: ['Links for outsiders'],
  summary: 'List when a link was looked at',
  description: 'The latest first, with the browser as it called itself; no address is kept. For `owner` and `manager`.',
  security: SIGNED_IN,
  request: { params: ShareLinkPath, query: z.strictObject(pageQuery) },
  responses: { 200: page(LookPage, 'A page of looks.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listLooksRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'share') }, async (c) => {
    const { linkId } = c.req.valid('param');
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'looks', linkId };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const found = await read(c, deps, async (tx) =>
      (await loadShareLink(tx, linkId)) ? listLooks(tx, linkId, limit, start.after) : null,
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    const items = found.rows.map(({ at, ...look }) => ({ ...withoutNulls(look), at: at.toISOString() }));
    return c.json({ items, nextCursor: next }, 200);
  });
}
