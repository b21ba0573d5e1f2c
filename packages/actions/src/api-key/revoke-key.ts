/** Takes a key's secrets away, old and new, at once. The key stays on the list of what was. */
import { type ApiKeyRecord, lockApiKey, revokeApiKey } from '@garboard/db/api-key/api-keys.ts';
import { mayKeep } from '@garboard/domain/api-key/api-key.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { REVOKED } from './renew-key.ts';

export type KeyToRevoke = { readonly keyId: string; readonly expectedVersion: number; readonly reason: string | null };

export function revokeKey(
  ctx: ActionContext,
  { keyId, expectedVersion, reason }: KeyToRevoke,
): Promise<Written<ApiKeyRecord, 'not_found' | 'stale' | 'conflict'>> {
  return write(ctx, 'keep_keys', async (write) => {
    const before = await lockApiKey(write.tx, keyId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (!mayKeep(ctx.actor, before)) return refused({ kind: 'forbidden' });
    if (before.revokedAt) return refused({ kind: 'conflict', detail: REVOKED });
    await revokeApiKey(write.tx, before, ctx.now);
    const revokedAt = ctx.now.toISOString();
    const after = { revokedAt, ...(reason !== null && { reason }) };
    audit(write, { verb: 'revoke_api_key', subject: 'api_key', subjectId: keyId, before: null, after });
    return done({ ...before, revokedAt, previousUntil: null, version: before.version + 1 });
  });
}
