/** POST /v1/account/erasure: one's name, address and every way in are gone; what one recorded stays. */
import { eraseAccount } from '@garboard/actions/organisation/erase-account.ts';
import { AccountErasure } from '@garboard/contract/organisation/account.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { BODY_PROBLEMS, body, IDEMPOTENCY_KEY, PERSON, problems, routes } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { personContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { forgetSession, personAccess, personOf } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/account/erasure',
  operationId: 'eraseAccount',
  tags: ['Account'],
  summary: 'Erase your account',
  description:
    'Name, address, passwords, passkeys and sessions are gone for good, and you leave every organisation. What you recorded stays with your id, which now says only that it was a former member. The last owner of an organisation must hand it over first. Nobody is left to repeat it, so `Idempotency-Key` has no effect.',
  security: PERSON,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(AccountErasure) },
  responses: { 204: { description: 'Erased.' }, ...BODY_PROBLEMS, ...problems('conflict') },
});

export function eraseAccountRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [personAccess(deps), ...jsonBody] }, async (c) => {
    if (c.req.valid('json').email.trim().toLowerCase() !== personOf(c).email)
      return problem(c, 'invalid', { errors: [{ pointer: '/email', detail: 'is not your address' }] });
    const result = await eraseAccount(personContext(c, deps, null));
    if (!result.ok) return answerFailure(c, result.failure);
    forgetSession(c, deps);
    return c.body(null, 204);
  });
}
