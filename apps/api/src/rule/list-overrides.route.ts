/** GET /v1/vessels/{vesselId}/overrides: the figures set for her, the latest to take effect first. */
import { OverridePage } from '@garboard/contract/rule/override.ts';
import { listOverrides } from '@garboard/db/rule/overrides.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, problems, READ_PROBLEMS, routes, SIGNED_IN, VesselPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { DatedKey, pageQuery } from '../request/query-params.ts';
import { presentOverride } from './present-override.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessels/{vesselId}/overrides',
  operationId: 'listOverrides',
  tags: ['Catalogue'],
  summary: 'List the figures of your own that count for a vessel',
  description: 'Hers and her items’, the latest to take effect first. Ended ones stay.',
  security: SIGNED_IN,
  request: { params: VesselPath, query: z.strictObject(pageQuery) },
  responses: { 200: page(OverridePage, 'A page of figures.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listOverridesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'overrides', vesselId };
    const start = readCursor(cursor, question, DatedKey);
    if (!start.ok) return badCursor(c);
    const found = await read(
      c,
      deps,
      async (tx) => (await loadVessel(tx, vesselId)) && listOverrides(tx, vesselId, limit, start.after),
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { on: last.from, id: last.id });
    return c.json({ items: found.rows.map(presentOverride), nextCursor: next }, 200);
  });
}
