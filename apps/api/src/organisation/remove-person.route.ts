/** POST /v1/people/{personId}/removal: somebody does not work here any more. */
import { removeMember } from '@garboard/actions/organisation/remove-member.ts';
import { PersonRemoval } from '@garboard/contract/organisation/person.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  gone,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  PersonPath,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { access } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/people/{personId}/removal',
  operationId: 'removePerson',
  tags: ['People'],
  summary: 'Remove somebody',
  description:
    'For `owner` and `manager`; only an owner removes an owner, and never the last one. Their next request is refused; what they recorded stays. `If-Match` is required.',
  security: SIGNED_IN,
  request: { params: PersonPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(PersonRemoval) },
  responses: {
    204: gone('Removed.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function removePersonRoute(deps: Deps) {
  const middleware = [access(deps, 'manage_people'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { personId } = c.req.valid('param');
    const { reason } = c.req.valid('json');
    const context = actionContext(c, deps, { reason });
    const result = await removeMember(context, { personId, expectedVersion: ifMatch.version, reason });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { replayed: result.replayed });
    return c.body(null, 204);
  });
}
