/** POST /v1/organisation/leaving: one's own membership ends. */
import { leaveOrganisation } from '@garboard/actions/organisation/remove-member.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { PERSON, PERSON_PROBLEMS, problems, routes } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { access, personAccess } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/organisation/leaving',
  operationId: 'leaveOrganisation',
  tags: ['People'],
  summary: 'Leave the organisation you are at',
  description: 'Everybody may but its last owner. What you recorded stays. A repeat finds you gone already.',
  security: PERSON,
  responses: { 204: { description: 'You do not belong to it any more.' }, ...PERSON_PROBLEMS, ...problems('conflict') },
});

export function leaveOrganisationRoute(deps: Deps) {
  const middleware = [personAccess(deps), access(deps, 'read')];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const result = await leaveOrganisation(actionContext(c, deps, null));
    if (result.ok) return c.body(null, 204);
    // Without a key there is none that could have been used before.
    if (result.failure.kind === 'key_reused') return problem(c, 'forbidden');
    return answerFailure(c, result.failure);
  });
}
