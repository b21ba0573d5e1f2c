/** GET /v1/people: who works here. */
import { PersonPage } from '@garboard/contract/organisation/person.ts';
import { listMembers } from '@garboard/db/organisation/people.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { access, callerOf } from './access.ts';
import { presentPerson } from './present-people.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/people',
  operationId: 'listPeople',
  tags: ['People'],
  summary: 'List who works here',
  description: 'Those who belong to the organisation now, in the order in which they came.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(PersonPage, 'A page of people.'), ...READ_PROBLEMS },
});

export function listPeopleRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'people' };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listMembers(tx, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    const by = callerOf(c).actor;
    return c.json({ items: rows.map((row) => presentPerson(row, by)), nextCursor: next }, 200);
  });
}
