/** GET /v1/vessels/{vesselId}/events: what happened to her and what is planned, the latest first. */
import { VesselEventPage } from '@garboard/contract/vessel/situation.ts';
import { listEvents } from '@garboard/db/vessel/events.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, problems, READ_PROBLEMS, routes, SIGNED_IN, VesselPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { DatedKey, pageQuery } from '../request/query-params.ts';
import { presentEvent } from './present-situation.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessels/{vesselId}/events',
  operationId: 'listEvents',
  tags: ['Vessels'],
  summary: 'List what happened to a vessel and what is planned',
  description: 'The latest first.',
  security: SIGNED_IN,
  request: { params: VesselPath, query: z.strictObject(pageQuery) },
  responses: { 200: page(VesselEventPage, 'A page of events.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listEventsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'events', vesselId };
    const start = readCursor(cursor, question, DatedKey);
    if (!start.ok) return badCursor(c);
    const found = await read(
      c,
      deps,
      async (tx) => (await loadVessel(tx, vesselId)) && listEvents(tx, vesselId, limit, start.after),
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { on: last.on, id: last.id });
    return c.json({ items: found.rows.map(presentEvent), nextCursor: next }, 200);
  });
}
