/** Ending one's sessions elsewhere: one of them, or all but the one that asks. The next request of each is refused. */

import { Id } from '@garboard/contract/shared.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { PERSON, PERSON_PROBLEMS, problems, routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { accountsOf, personAccess, personOf } from './access.ts';

const one = createRoute({
  method: 'post',
  path: '/v1/account/sessions/{sessionId}/end',
  operationId: 'endOneSession',
  tags: ['Account'],
  summary: 'End one of your sessions',
  description: 'Its next request is refused. A repeat finds nothing, so `Idempotency-Key` is not needed.',
  security: PERSON,
  request: { params: z.object({ sessionId: Id }) },
  responses: { 204: { description: 'It is over.' }, ...PERSON_PROBLEMS, ...problems('not-found') },
});

const others = createRoute({
  method: 'post',
  path: '/v1/account/other-sessions/end',
  operationId: 'endOtherSessions',
  tags: ['Account'],
  summary: 'End all your sessions but this one',
  description: 'To repeat it is harmless, so `Idempotency-Key` is not needed.',
  security: PERSON,
  responses: { 204: { description: 'Only this session is left.' }, ...PERSON_PROBLEMS },
});

export function endSessionsRoute(deps: Deps) {
  const middleware = personAccess(deps);
  return routes()
    .openapi({ ...one, middleware }, async (c) => {
      const ended = await accountsOf(deps).endSession(personOf(c).id, c.req.valid('param').sessionId);
      return ended ? c.body(null, 204) : problem(c, 'not-found');
    })
    .openapi({ ...others, middleware }, async (c) => {
      await accountsOf(deps).endOtherSessions(personOf(c).id, personOf(c).sessionId);
      return c.body(null, 204);
    });
}
