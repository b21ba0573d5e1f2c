/** GET /v1/vessels/{vesselId}/items: the things aboard. */
import { ItemPage } from '@garboard/contract/item/item.ts';
import { listItems } from '@garboard/db/item/items.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, problems, READ_PROBLEMS, routes, SIGNED_IN, VesselPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentItem } from './present-item.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessels/{vesselId}/items',
  operationId: 'listItems',
  tags: ['Items'],
  summary: 'List the things aboard a vessel',
  description: 'In the order in which they were added; withdrawn ones too.',
  security: SIGNED_IN,
  request: { params: VesselPath, query: z.strictObject(pageQuery) },
  responses: { 200: page(ItemPage, 'A page of items.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listItemsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'items', vesselId };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const found = await read(
      c,
      deps,
      async (tx) => (await loadVessel(tx, vesselId)) && listItems(tx, vesselId, limit, start.after?.id),
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: found.rows.map(presentItem), nextCursor: next }, 200);
  });
}
