/** Gives a key a new secret; the old one goes on for the hours that were asked for, so that no program stops. */
import { type ApiKeyRecord, lockApiKey, renewApiKey } from '@garboard/db/api-key/api-keys.ts';
import { endOf, mintToken } from '@garboard/db/organisation/token.ts';
import { keyEndFaults, mayKeep } from '@garboard/domain/api-key/api-key.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, type Result, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { keyToldOnce, type TextOfKey } from './make-key.ts';

export type KeyToRenew = {
  readonly keyId: string;
  readonly expectedVersion: number;
  readonly overlapHours: number;
  readonly expiresAt: Date;
};
type Own = 'invalid' | 'not_found' | 'stale' | 'conflict';

const HOUR_MS = 3_600_000;
export const REVOKED = 'The key is revoked; make a new one.';

export async function renewKey(ctx: ActionContext, asked: KeyToRenew): Promise<Written<TextOfKey, Own>> {
  const { keyId, expectedVersion, overlapHours, expiresAt } = asked;
  const token = mintToken('api_key', ctx.organisationId, keyId);
  const result = await write<Result<ApiKeyRecord, 'forbidden' | Own>>(ctx, 'keep_keys', async (write) => {
    const before = await lockApiKey(write.tx, keyId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (!mayKeep(ctx.actor, before)) return refused({ kind: 'forbidden' });
    if (before.revokedAt) return refused({ kind: 'conflict', detail: REVOKED });
    const faults = keyEndFaults(expiresAt, ctx.now);
    if (faults.length > 0)
      return refused({ kind: 'invalid', errors: faults.map(({ at, detail }) => ({ pointer: `/${at}`, detail })) });
    const after: ApiKeyRecord = {
      ...before,
      endsWith: endOf(token.text),
      expiresAt: expiresAt.toISOString(),
      previousUntil: overlapEnd(before, ctx.now, overlapHours),
      version: before.version + 1,
    };
    await renewApiKey(write.tx, token, after);
    audit(write, { verb: 'renew_api_key', subject: 'api_key', subjectId: keyId, before, after });
    return done(after);
  });
  return keyToldOnce<'forbidden' | 'key_reused' | Own>(result, token.text);
}

/** The old secret does not outlive what it was given. */
function overlapEnd({ expiresAt }: ApiKeyRecord, now: Date, hours: number): string | null {
  const end = Math.min(now.getTime() + hours * HOUR_MS, Date.parse(expiresAt));
  return end > now.getTime() ? new Date(end).toISOString() : null;
}
