/** GET /v1/saved-views: one's own views and everybody's. */
import { SavedViewPage } from '@garboard/contract/saved-view/saved-view.ts';
import { Id } from '@garboard/contract/shared.ts';
import { listSavedViews } from '@garboard/db/saved-view/saved-views.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { pageQuery } from '../request/query-params.ts';
import { presentSavedView } from './present-saved-view.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/saved-views',
  operationId: 'listSavedViews',
  tags: ['Due list'],
  summary: 'List the saved views',
  description: 'By name: those of whoever asks, and those that are shared in the organisation.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(SavedViewPage, 'A page of views.'), ...READ_PROBLEMS },
});

const Key = z.object({ name: z.string(), id: Id });

export function listSavedViewsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const viewerId = callerOf(c).actor.id;
    const question = { list: 'saved-views', viewerId };
    const start = readCursor(cursor, question, Key);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listSavedViews(tx, viewerId, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { name: last.name, id: last.id });
    return c.json({ items: rows.map(presentSavedView), nextCursor: next }, 200);
  });
}
