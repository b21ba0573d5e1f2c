/** Invites somebody by their address. The letter itself is sent once this is committed. */
import { findInvitationTo, type InvitationRecord, insertInvitation } from '@garboard/db/organisation/invitations.ts';
import { isMemberAddress } from '@garboard/db/organisation/people.ts';
import { mintToken } from '@garboard/db/organisation/token.ts';
import { type Grant, mayAssign } from '@garboard/domain/organisation/membership.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused, type Written } from '../result.ts';
import { toldOnce } from '../told-once.ts';
import { write } from '../write.ts';
import { faultsOfGrant } from './grant-checks.ts';

const DAY_MS = 86_400_000;
/** House convention, no source. */
const INVITATION_DAYS = 7;

export type NewInvitation = Grant & { readonly email: string };
/** `text`: what the link in the letter ends with. Stored nowhere; a repeated request does not get it again. */
export type Invited = { readonly invitation: InvitationRecord; readonly text: string | null };

type Kept = Result<InvitationRecord, 'forbidden' | 'invalid' | 'conflict'>;

export async function invitePerson(
  ctx: ActionContext,
  { email, ...grant }: NewInvitation,
): Promise<Written<Invited, 'invalid' | 'conflict'>> {
  const token = mintToken('invitation', ctx.organisationId, newId(ctx.now));
  const result = await write<Kept>(ctx, 'manage_people', async (write) => {
    if (!mayAssign(ctx.actor.role, null, grant.role)) return refused({ kind: 'forbidden' });
    const errors = await faultsOfGrant(write.tx, grant);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    if (await isMemberAddress(write.tx, email))
      return refused({ kind: 'conflict', detail: 'Somebody with this address belongs to the organisation already.' });
    if (await findInvitationTo(write.tx, email, ctx.now))
      return refused({ kind: 'conflict', detail: 'There is an open invitation to this address already.' });
    const invitation = newInvitation(ctx, token.id, email, grant);
    await insertInvitation(write.tx, token, invitation);
    // No address in the audit: it can be erased, the audit cannot.
    const { email: none, ...after } = invitation;
    audit(write, { verb: 'invite', subject: 'invitation', subjectId: token.id, before: null, after });
    return done(invitation);
  });
  return toldOnce(result, token.text, (invitation, text) => ({ invitation, text }));
}

function newInvitation(ctx: ActionContext, id: string, email: string, grant: Grant): InvitationRecord {
  return {
    ...grant,
    id,
    email,
    invitedBy: actorText(ctx.actor),
    createdAt: ctx.now.toISOString(),
    expiresAt: new Date(ctx.now.getTime() + INVITATION_DAYS * DAY_MS).toISOString(),
    acceptedAt: null,
    withdrawnAt: null,
    version: 1,
  };
}
