/** A person accepts an invitation to their own address, and is in the organisation at once. One of several wins. */
import { closeInvitation, lockInvitationOf } from '@garboard/db/organisation/invitations.ts';
import { insertMembership, lockMembership } from '@garboard/db/organisation/memberships.ts';
import { loadOrganisation, type VersionedOrganisation } from '@garboard/db/organisation/organisations.ts';
import { goToOrganisation } from '@garboard/db/organisation/sessions.ts';
import { readToken, type Token } from '@garboard/db/organisation/token.ts';
import { inOrganisation, type Scoped, wholeFleet } from '@garboard/db/scope.ts';
import { audit } from '../audit.ts';
import type { PersonContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused, type Written } from '../result.ts';
import { catchRefusal, writeOnce } from '../write.ts';
import { asPerson } from './as-person.ts';

/** Unknown, used, withdrawn and run out look alike, and so does an invitation to another address. */
export async function acceptInvitation(
  ctx: PersonContext,
  text: string,
): Promise<Written<VersionedOrganisation, 'not_found' | 'conflict'>> {
  const token = readToken(text);
  if (token?.kind !== 'invitation') return refused({ kind: 'not_found' });
  return catchRefusal(() =>
    inOrganisation(ctx.db, wholeFleet(token.organisationId), (tx) => {
      // What the person may do here is known only from the invitation.
      const write = asPerson(ctx, tx, token.organisationId, 'viewer');
      return writeOnce({ ...write, ctx: { ...write.ctx, ...(ctx.once && { once: ctx.once }) } }, () =>
        accept(ctx, tx, token),
      );
    }),
  );
}

async function accept(
  ctx: PersonContext,
  tx: Scoped,
  token: Token,
): Promise<Result<VersionedOrganisation, 'not_found' | 'conflict'>> {
  const { organisationId } = token;
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
}
