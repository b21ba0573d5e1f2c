/** GET /v1/items/{itemId}: one thing aboard. */
import { Item } from '@garboard/contract/item/item.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ItemPath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentItem } from './present-item.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/items/{itemId}',
  operationId: 'getItem',
  tags: ['Items'],
  summary: 'Read one item',
  description: 'What is written of it. Its dates are facts, and what follows from them are obligations.',
  security: SIGNED_IN,
  request: { params: ItemPath },
  responses: { 200: versioned(Item, 'The item.'), ...READ_ONE_PROBLEMS },
});

export function getItemRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { itemId } = c.req.valid('param');
    const item = await read(c, deps, (tx) => loadItem(tx, itemId));
    if (!item) return problem(c, 'not-found');
    tellWritten(c, { version: item.version });
    return c.json(presentItem(item), 200);
  });
}
