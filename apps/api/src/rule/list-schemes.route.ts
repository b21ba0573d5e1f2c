/** GET /v1/schemes: the bodies of rules that a vessel can be kept under. */
import { SchemePage } from '@garboard/contract/rule/rule.ts';
import { SCHEMES } from '@garboard/domain/rule/scheme.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { pageQuery } from '../request/query-params.ts';
import { pageOfCatalogue } from './page-of-catalogue.ts';
import { presentScheme } from './present-rule.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/schemes',
  operationId: 'listSchemes',
  tags: ['Catalogue'],
  summary: 'List the schemes',
  description: 'Law first. What stands behind each is its weight; those marked `always` apply to every vessel.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(SchemePage, 'A page of schemes.'), ...READ_PROBLEMS },
});

export function listSchemesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'schemes' };
    const start = readCursor(cursor, question, z.string());
    const found = start.ok && pageOfCatalogue(SCHEMES, limit, start.after);
    if (!found) return badCursor(c);
    return c.json({ items: found.entries.map(presentScheme), nextCursor: nextCursor(c, question, found.last) }, 200);
  });
}
