/** POST /v1/session/end: signs out. */
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { PERSON, PERSON_PROBLEMS, routes } from '../openapi/declare.ts';
import { accountsOf, forgetSession, personAccess, personOf } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/session/end',
  operationId: 'endSession',
  tags: ['Session'],
  summary: 'Sign out',
  description:
    'Ends the session of the cookie and takes the cookie away. An API key has no session to end. To repeat it is harmless, so `Idempotency-Key` is not needed.',
  security: PERSON,
  responses: { 204: { description: 'Signed out.' }, ...PERSON_PROBLEMS },
});

export function endSessionRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: personAccess(deps) }, async (c) => {
    const { id, sessionId } = personOf(c);
    await accountsOf(deps).endSession(id, sessionId);
    forgetSession(c, deps);
    return c.body(null, 204);
  });
}
