/** GET /v1/items/{itemId}/facts: everything stated about it, in the order in which it was learned. */
import { FactPage } from '@garboard/contract/item/fact.ts';
import { listFacts } from '@garboard/db/item/facts.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ItemPath, page, problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentFact } from './present-fact.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/items/{itemId}/facts',
  operationId: 'listFacts',
  tags: ['Items'],
  summary: 'List the facts about an item',
  description:
    'In the order in which they were learned. A struck-out fact stays, and `struckOutBy` names the correction.',
  security: SIGNED_IN,
  request: { params: ItemPath, query: z.strictObject(pageQuery) },
  responses: { 200: page(FactPage, 'A page of facts.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listFactsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { itemId } = c.req.valid('param');
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'facts', itemId };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const found = await read(
      c,
      deps,
      async (tx) => (await loadItem(tx, itemId)) && listFacts(tx, itemId, limit, start.after?.id),
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: found.rows.map(presentFact), nextCursor: next }, 200);
  });
}
