/** POST /v1/invitations/preview: what a link in a letter offers, before one signs in. */
import { InvitationPreview, InvitationToken } from '@garboard/contract/organisation/invitation.ts';
import { findInvitationOf } from '@garboard/db/organisation/invitations.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ANYBODY, body, IDEMPOTENCY_KEY, json, problems, routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { jsonBody } from '../request/json-body.ts';
import { presentGrant } from './present-people.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/invitations/preview',
  operationId: 'previewInvitation',
  tags: ['People'],
  summary: 'Look at an invitation by its link',
  description:
    'For whoever has the link. Unknown, used, withdrawn and run out look alike. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect.',
  'x-reads-only': true,
  security: ANYBODY,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(InvitationToken) },
  responses: {
    200: json(InvitationPreview, 'What is offered.'),
    ...problems('malformed-json', 'not-found', 'too-large', 'unsupported-media-type', 'invalid', 'fault'),
  },
});

export function previewInvitationRoute({ pools, now }: Deps) {
  return routes().openapi({ ...route, middleware: [...jsonBody] }, async (c) => {
    c.header('cache-control', 'no-store');
    const token = readToken(c.req.valid('json').token);
    if (token?.kind !== 'invitation') return problem(c, 'not-found');
    const found = await inOrganisation(pools.app, wholeFleet(token.organisationId), async (tx) => {
      const invitation = await findInvitationOf(tx, token, now());
      return invitation && { invitation, organisation: (await loadOrganisation(tx)).name };
    });
    if (!found) return problem(c, 'not-found');
    const { invitation, organisation } = found;
    const { email, expiresAt } = invitation;
    return c.json({ organisation, email: email ?? '', ...presentGrant(invitation), expiresAt }, 200);
  });
}
