/** GET /v1/limitations: across the fleet. */
import { Id } from '@garboard/contract/shared.ts';
import { LimitationPage } from '@garboard/contract/survey-visit/walk.ts';
import { listLimitations } from '@garboard/db/survey-visit/limitations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentLimitation } from './present-visit.ts';

const filters = {
  vesselId: Id.optional(),
  lifted: z.enum(['true', 'false']).optional().meta({ description: 'Without it: both.' }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/limitations',
  operationId: 'listLimitations',
  tags: ['Visits'],
  summary: 'List limitations',
  description: 'What could not be examined, in the order in which it was written.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ ...filters, ...pageQuery }) },
  responses: { 200: page(LimitationPage, 'A page of limitations.'), ...READ_PROBLEMS },
});

export function listLimitationsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, vesselId, lifted } = c.req.valid('query');
    const filter = given({ vesselId, lifted: lifted === undefined ? undefined : lifted === 'true' });
    const question = { list: 'limitations', filter };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listLimitations(tx, filter, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: rows.map(presentLimitation), nextCursor: next }, 200);
  });
}
