/** GET /v1/findings/{findingId}: how it stands. */
import { Finding } from '@garboard/contract/finding/finding.ts';
import { loadFindingView } from '@garboard/db/finding/list-findings.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { FindingPath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentFinding } from './present-finding.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/findings/{findingId}',
  operationId: 'getFinding',
  tags: ['Findings'],
  summary: 'Read a finding',
  description: 'As it stands now. Its story is at `…/entries`.',
  security: SIGNED_IN,
  request: { params: FindingPath },
  responses: { 200: versioned(Finding, 'The finding.'), ...READ_ONE_PROBLEMS },
});

export function getFindingRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { findingId } = c.req.valid('param');
    const view = await read(c, deps, (tx) => loadFindingView(tx, findingId));
    if (!view) return problem(c, 'not-found');
    tellWritten(c, { version: view.version });
    return c.json(presentFinding(view, deps.now()), 200);
  });
}
