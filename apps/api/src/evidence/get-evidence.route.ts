/** GET /v1/evidence/{evidenceId}: what is known of one photograph or paper. */
import { EvidenceFile } from '@garboard/contract/evidence/evidence.ts';
import { loadEvidence } from '@garboard/db/evidence/evidence.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { EvidencePath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { etagOf } from '../request/etag.ts';
import { presentEvidence } from './present-evidence.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/evidence/{evidenceId}',
  operationId: 'getEvidence',
  tags: ['Evidence'],
  summary: 'Read about a photograph or paper',
  description: 'What it shows, where and when. It never changes.',
  security: SIGNED_IN,
  request: { params: EvidencePath },
  responses: { 200: versioned(EvidenceFile, 'What is known of it.'), ...READ_ONE_PROBLEMS },
});

export function getEvidenceRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const record = await read(c, deps, (tx) => loadEvidence(tx, c.req.valid('param').evidenceId));
    if (!record) return problem(c, 'not-found');
    c.header('etag', etagOf(1));
    return c.json(presentEvidence(record), 200);
  });
}
