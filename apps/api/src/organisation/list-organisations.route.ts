/** GET /v1/organisations: those the person belongs to. */
import { BelongingPage } from '@garboard/contract/organisation/organisation.ts';
import { listOrganisationsOf } from '@garboard/db/organisation/sessions.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { PERSON, page, READ_PROBLEMS, routes } from '../openapi/declare.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { personAccess, personOf } from './access.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/organisations',
  operationId: 'listOrganisations',
  tags: ['Organisations'],
  summary: 'List the organisations you belong to',
  description: 'By name, each with your role in it. For a person who has signed in.',
  security: PERSON,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(BelongingPage, 'A page of organisations.'), ...READ_PROBLEMS },
});

export function listOrganisationsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: personAccess(deps) }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'organisations', person: personOf(c).id };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const all = await listOrganisationsOf(deps.pools.app, personOf(c).id);
    const from = start.after ? all.findIndex(({ id }) => id === start.after?.id) + 1 : 0;
    const items = all.slice(from, from + limit);
    const last = from + limit < all.length ? items.at(-1) : undefined;
    return c.json({ items, nextCursor: nextCursor(c, question, last && { id: last.id }) }, 200);
  });
}
