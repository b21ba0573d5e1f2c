/** GET /v1/visits/{visitId}/sealed-copy: what was sealed, to take away. */
import { SealedCopy } from '@garboard/contract/survey-visit/visit.ts';
import { loadSealed } from '@garboard/db/survey-visit/visits.ts';
import { loadAddenda } from '@garboard/db/survey-visit/walked.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, READ_ONE_PROBLEMS, routes, SIGNED_IN, VisitPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { presentAddendum } from './present-visit.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/visits/{visitId}/sealed-copy',
  operationId: 'getSealedCopy',
  tags: ['Visits'],
  summary: 'Take the sealed copy of a visit away',
  description:
    'The text that was sealed with its hash, and the addenda. Of a visit that is still open there is none: 404. Whoever the client is, it can always be taken.',
  security: SIGNED_IN,
  request: { params: VisitPath },
  responses: { 200: json(SealedCopy, 'The sealed copy.'), ...READ_ONE_PROBLEMS },
});

export function getSealedCopyRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { visitId } = c.req.valid('param');
    const copy = await read(c, deps, async (tx) => {
      const sealed = await loadSealed(tx, visitId);
      return sealed && { ...sealed, addenda: (await loadAddenda(tx, visitId)).map(presentAddendum) };
    });
    return copy ? c.json(copy, 200) : problem(c, 'not-found');
  });
}
