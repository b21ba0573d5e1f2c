/** A person accepts an invitation to their own address, and is in the organisation at once. One of several wins. */
import { closeInvitation, lockInvitationOf } from '@garboard/db/organisation/invitations.ts';
import { insertMembership, lockMembership } from '@garboard/db/organisation/memberships.ts';
import { loadOrganisation, type VersionedOrganisation } from '@garboard/db/organisation/organisations.ts';
import { goToOrganisation } from '@garboard/db/organisation/sessions.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { audit } from '../audit.ts';
import type { PersonContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused } from '../result.ts';
import { asPerson } from './as-person.ts';

/** Unknown, used, withdrawn and run out look alike, and so does an invitation to another address. */
export async function acceptInvitation(
  ctx: PersonContext,
  text: string,
): Promise<Result<VersionedOrganisation, 'not_found' | 'conflict'>> {
  const token = readToken(text);
  if (token?.kind !== 'invitation') return refused({ kind: 'not_found' });
  const { organisationId } = token;
  return inOrganisation(ctx.db, wholeFleet(organisationId), async (tx) => {
    const invitation = await lockInvitationOf(tx, token, ctx.now);
    if (!invitation || invitation.email !== ctx.person.email) return refused({ kind: 'not_found' });
    if (await lockMembership(tx, ctx.person.id))
      return refused({ kind: 'conflict', detail: 'You belong to this organisation already.' });
    await closeInvitation(tx, invitation, 'accepted_at', ctx.now);
    const { role, vesselIds } = invitation;
    const membership = { id: newId(ctx.now), personId: ctx.person.id, role, vesselIds };
    await insertMembership(tx, organisationId, { ...membership, joinedAt: ctx.now.toISOString() });
    audit(asPerson(ctx, tx, organisationId, role), {
      verb: 'join',
      subject: 'person',
      subjectId: ctx.person.id,
      before: null,
      after: { role, vesselIds, invitation: invitation.id },
    });
    await goToOrganisation(tx, ctx.person.sessionId, organisationId);
    return done(await loadOrganisation(tx));
  });
}
