/** GET /v1/item-kinds: the things aboard that the catalogue knows. */
import { ItemKindPage } from '@garboard/contract/rule/rule.ts';
import { ITEM_KINDS } from '@garboard/domain/item/item-kind.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { pageQuery } from '../request/query-params.ts';
import { pageOfCatalogue } from './page-of-catalogue.ts';
import { presentItemKind } from './present-rule.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/item-kinds',
  operationId: 'listItemKinds',
  tags: ['Catalogue'],
  summary: 'List the kinds of item',
  description:
    'With the facts that such a thing usually has, where each date is usually found, and the attributes that rules ask for.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(ItemKindPage, 'A page of kinds.'), ...READ_PROBLEMS },
});

export function listItemKindsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'item-kinds' };
    const start = readCursor(cursor, question, z.string());
    const found = start.ok && pageOfCatalogue(ITEM_KINDS, limit, start.after);
    if (!found) return badCursor(c);
    return c.json({ items: found.entries.map(presentItemKind), nextCursor: nextCursor(c, question, found.last) }, 200);
  });
}
