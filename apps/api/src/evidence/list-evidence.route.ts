/** GET /v1/vessels/{vesselId}/evidence: her photographs and papers. */
import { EvidenceFilePage } from '@garboard/contract/evidence/evidence.ts';
import { ZoneCode } from '@garboard/contract/finding/codes.ts';
import { Id } from '@garboard/contract/shared.ts';
import { listEvidence } from '@garboard/db/evidence/evidence.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, problems, READ_PROBLEMS, routes, SIGNED_IN, VesselPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { DatedKey, pageQuery } from '../request/query-params.ts';
import { presentEvidence } from './present-evidence.ts';

const filters = {
  zone: ZoneCode.optional().meta({ description: 'Of one place only.' }),
  point: z.string().max(80).optional().meta({ description: 'Of one survey point only, over the visits.' }),
  visitId: Id.optional().meta({ description: 'Of one survey visit only.' }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/vessels/{vesselId}/evidence',
  operationId: 'listEvidence',
  tags: ['Evidence'],
  summary: 'List photographs and papers',
  description: 'The latest taken first.',
  security: SIGNED_IN,
  request: { params: VesselPath, query: z.strictObject({ ...filters, ...pageQuery }) },
  responses: {
    200: page(EvidenceFilePage, 'A page of photographs and papers.'),
    ...READ_PROBLEMS,
    ...problems('not-found'),
  },
});

export function listEvidenceRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const { limit, cursor, ...asked } = c.req.valid('query');
    const filter = { vesselId, ...given(asked) };
    const question = { list: 'evidence', filter };
    const start = readCursor(cursor, question, DatedKey);
    if (!start.ok) return badCursor(c);
    const found = await read(c, deps, async (tx) =>
      (await loadVessel(tx, vesselId)) ? listEvidence(tx, filter, limit, start.after) : null,
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { on: last.takenOn, id: last.id });
    return c.json({ items: found.rows.map(presentEvidence), nextCursor: next }, 200);
  });
}
