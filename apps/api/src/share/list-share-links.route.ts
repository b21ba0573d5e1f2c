/** GET /v1/share-links: what is and was shown to outsiders. */
import { ShareLinkPage } from '@garboard/contract/share/share-link.ts';
import { listShareLinks } from '@garboard/db/share/share-links.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentLink } from './present-share.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/share-links',
  operationId: 'listShareLinks',
  tags: ['Links for outsiders'],
  summary: 'List the links that outsiders have',
  description: 'The latest first, with those that are revoked or have run out. For `owner` and `manager`.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(ShareLinkPage, 'A page of links.'), ...READ_PROBLEMS },
});

export function listShareLinksRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'share') }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'share-links' };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listShareLinks(tx, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: rows.map(presentLink), nextCursor: next }, 200);
  });
}
