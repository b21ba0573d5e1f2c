/** POST /v1/invitations/{invitationId}/withdrawal: the link opens nothing any more. */
import { withdrawInvitation } from '@garboard/actions/organisation/withdraw-invitation.ts';
import { Invitation, InvitationWithdrawal } from '@garboard/contract/organisation/invitation.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  InvitationPath,
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
import { presentInvitation } from './present-people.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/invitations/{invitationId}/withdrawal',
  operationId: 'withdrawInvitation',
  tags: ['People'],
  summary: 'Withdraw an invitation',
  description: 'For `owner` and `manager`. `If-Match` is required.',
  security: SIGNED_IN,
  request: {
    params: InvitationPath,
    headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }),
    body: body(InvitationWithdrawal),
  },
  responses: {
    200: changed(Invitation, 'The invitation as withdrawn.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function withdrawInvitationRoute(deps: Deps) {
  const middleware = [access(deps, 'manage_people'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { invitationId } = c.req.valid('param');
    const { reason = null } = c.req.valid('json');
    const context = actionContext(c, deps, { reason });
    const result = await withdrawInvitation(context, { invitationId, expectedVersion: ifMatch.version, reason });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentInvitation(result.value), 200);
  });
}
