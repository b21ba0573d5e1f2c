/** POST /v1/session/end: signs out. */
import { endSession } from '@garboard/actions/organisation/session.ts';
import { createRoute } from '@hono/zod-openapi';
import { deleteCookie } from 'hono/cookie';
import type { Deps } from '../deps.ts';
import { problems, routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { access, callerOf, SESSION_COOKIE } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/session/end',
  operationId: 'endSession',
  tags: ['Session'],
  summary: 'Sign out',
  description:
    'Ends the session of the cookie and takes the cookie away. An API key has no session to end. To repeat it is harmless, so `Idempotency-Key` is not needed.',
  security: [{ session: [] }],
  responses: {
    204: { description: 'Signed out.' },
    ...problems('unauthenticated', 'forbidden', 'foreign-origin', 'fault'),
  },
});

export function endSessionRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    if (callerOf(c).actor.kind !== 'session')
      return problem(c, 'forbidden', { detail: 'An API key has no session to end.' });
    await endSession(actionContext(c, deps, null));
    deleteCookie(c, SESSION_COOKIE, { path: '/' });
    return c.body(null, 204);
  });
}
