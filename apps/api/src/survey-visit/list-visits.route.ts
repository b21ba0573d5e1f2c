/** GET /v1/visits: survey visits across the fleet, the latest first. */
import { Id } from '@garboard/contract/shared.ts';
import { VisitPage } from '@garboard/contract/survey-visit/visit.ts';
import { listVisits } from '@garboard/db/survey-visit/visits.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { DatedKey, pageQuery } from '../request/query-params.ts';
import { presentVisit } from './present-visit.ts';

const filters = {
  vesselId: Id.optional(),
  state: z.enum(['open', 'completed']).optional().meta({ description: 'Without it: both.' }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/visits',
  operationId: 'listVisits',
  tags: ['Visits'],
  summary: 'List survey visits',
  description: 'The latest first.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ ...filters, ...pageQuery }) },
  responses: { 200: page(VisitPage, 'A page of visits.'), ...READ_PROBLEMS },
});

export function listVisitsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, ...asked } = c.req.valid('query');
    const filter = given(asked);
    const question = { list: 'visits', filter };
    const start = readCursor(cursor, question, DatedKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listVisits(tx, filter, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { on: last.startedOn, id: last.id });
    return c.json({ items: rows.map(presentVisit), nextCursor: next }, 200);
  });
}
