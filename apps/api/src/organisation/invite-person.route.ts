/** POST /v1/invitations: invites somebody by their address. */
import { invitePerson } from '@garboard/actions/organisation/invite-person.ts';
import { Invitation, NewInvitation } from '@garboard/contract/organisation/invitation.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ApiEnv, Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, problems, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext, read } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { access } from './access.ts';
import { presentInvitation, toVessels } from './present-people.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/invitations',
  operationId: 'invitePerson',
  tags: ['People'],
  summary: 'Invite somebody',
  description:
    'For `owner` and `manager`; only an owner invites an owner. A letter with a link goes to the address. The link works once, for seven days, and only for who has signed in with that address.',
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewInvitation) },
  responses: { 201: created(Invitation, 'The invitation.'), ...WRITE_PROBLEMS, ...problems('conflict') },
});

export function invitePersonRoute(deps: Deps) {
  const middleware = [access(deps, 'manage_people'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const asked = c.req.valid('json');
    const { email, role, vesselIds } = asked;
    const wanted = { email, role, vesselIds: toVessels(vesselIds) };
    const result = await invitePerson(actionContext(c, deps, asked), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    const { invitation, text } = result.value;
    const mailed = text === null ? {} : { mailed: await sendLetter(c, deps, { ...wanted, text }) };
    tellWritten(c, { location: '/v1/invitations', version: invitation.version, replayed: result.replayed ?? false });
    return c.json({ ...presentInvitation(invitation), ...mailed }, 201);
  });
}

type Letter = { readonly email: string; readonly role: string; readonly text: string };

/** After the commit: a link must not arrive before what it opens. */
async function sendLetter(c: Context<ApiEnv>, deps: Deps, { email, role, text }: Letter): Promise<boolean> {
  const { name } = await read(c, deps, loadOrganisation);
  return (await deps.accounts?.sendInvitation(email, name, role, `/invitation/${text}`)) ?? false;
}
