/** GET /v1/vessels: the register, by name. */
import { VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { listVessels } from '@garboard/db/vessel/vessels.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { pageQuery } from '../request/query-params.ts';
import { presentVessel } from './present-vessel.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessels',
  operationId: 'listVessels',
  tags: ['Vessels'],
  summary: 'List the register',
  description: 'Every vessel of the organisation, by name.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(VesselPage, 'A page of vessels.'), ...READ_PROBLEMS },
});

const Key = z.object({ name: z.string(), id: z.uuid() });

export function listVesselsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'vessels' };
    const start = readCursor(cursor, question, Key);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listVessels(tx, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { name: last.name, id: last.id });
    return c.json({ items: rows.map(presentVessel), nextCursor: next }, 200);
  });
}
