/** The link shows nothing from now on. That it was, and who looked, stays known. */
import { lockShareLink, revokeShareLink, type ShareLinkRecord } from '@garboard/db/share/share-links.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

export type LinkToRevoke = {
  readonly linkId: string;
  readonly expectedVersion: number;
  readonly reason: string | null;
};

export function revokeLink(
  ctx: ActionContext,
  { linkId, expectedVersion, reason }: LinkToRevoke,
): Promise<Written<ShareLinkRecord, 'not_found' | 'stale' | 'conflict'>> {
  return write(ctx, 'share', async (write) => {
    const before = await lockShareLink(write.tx, linkId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (before.revokedAt) return refused({ kind: 'conflict', detail: 'It was revoked already.' });
    await revokeShareLink(write.tx, before, ctx.now);
    const revokedAt = ctx.now.toISOString();
    audit(write, {
      ...{ verb: 'revoke_share_link', subject: 'share_link', subjectId: linkId },
      before: null,
      after: { revokedAt, ...(reason !== null && { reason }) },
    });
    return done({ ...before, revokedAt, version: before.version + 1 });
  });
}
