/** POST /v1/invitations/acceptance: the person who signed in accepts an invitation to their address. */
import { acceptInvitation } from '@garboard/actions/organisation/accept-invitation.ts';
import { InvitationToken } from '@garboard/contract/organisation/invitation.ts';
import { Organisation } from '@garboard/contract/organisation/organisation.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { BODY_PROBLEMS, body, IDEMPOTENCY_KEY, PERSON, problems, routes, versioned } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { personContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { personAccess } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/invitations/acceptance',
  operationId: 'acceptInvitation',
  tags: ['People'],
  summary: 'Accept an invitation',
  description:
    'For the person to whose verified address it went; for others it is not there. Works once; a repeat with the same `Idempotency-Key` has the first answer. Afterwards the session is at that organisation.',
  security: PERSON,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(InvitationToken) },
  responses: {
    200: versioned(Organisation, 'The organisation you belong to now.'),
    ...BODY_PROBLEMS,
    ...problems('not-found', 'conflict'),
  },
});

export function acceptInvitationRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [personAccess(deps), ...jsonBody] }, async (c) => {
    const asked = c.req.valid('json');
    const result = await acceptInvitation(personContext(c, deps, asked), asked.token);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed ?? false });
    return c.json(result.value, 200);
  });
}
