/** Takes an invitation back: its link opens nothing any more. */
import { closeInvitation, type InvitationRecord, lockInvitation } from '@garboard/db/organisation/invitations.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

export type InvitationToWithdraw = {
  readonly invitationId: string;
  readonly expectedVersion: number;
  readonly reason: string | null;
};

export function withdrawInvitation(
  ctx: ActionContext,
  { invitationId, expectedVersion, reason }: InvitationToWithdraw,
): Promise<Written<InvitationRecord, 'not_found' | 'stale' | 'conflict'>> {
  return write(ctx, 'manage_people', async (write) => {
    const before = await lockInvitation(write.tx, invitationId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (before.acceptedAt || before.withdrawnAt)
      return refused({ kind: 'conflict', detail: 'It was accepted or withdrawn already.' });
    await closeInvitation(write.tx, before, 'withdrawn_at', ctx.now);
    const withdrawnAt = ctx.now.toISOString();
    const about = {
      subject: 'invitation',
      subjectId: invitationId,
      before: null,
      after: { withdrawnAt, reason },
    } as const;
    audit(write, { verb: 'withdraw_invitation', ...about });
    return done({ ...before, email: null, withdrawnAt, version: before.version + 1 });
  });
}
