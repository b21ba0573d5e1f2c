/** Makes a key for a program. Its text is told once and stored nowhere. */
import { type ApiKeyRecord, insertApiKey } from '@garboard/db/api-key/api-keys.ts';
import { endOf, mintToken } from '@garboard/db/organisation/token.ts';
import { type KeyGrant, keyFaults, mayKeep } from '@garboard/domain/api-key/api-key.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { unknownVessels } from '../organisation/grant-checks.ts';
import { done, type FailureKind, type Result, refused, type Written } from '../result.ts';
import { toldOnce } from '../told-once.ts';
import { write } from '../write.ts';

export type NewKey = KeyGrant & { readonly name: string; readonly expiresAt: Date };
/** `text`: `null` for a repeated request, which does not get it again. */
export type TextOfKey = { readonly key: ApiKeyRecord; readonly text: string | null };

type Kept = Result<ApiKeyRecord, 'forbidden' | 'invalid'>;

export async function makeKey(ctx: ActionContext, wanted: NewKey): Promise<Written<TextOfKey, 'invalid'>> {
  const token = mintToken('api_key', ctx.organisationId, newId(ctx.now));
  const result = await write<Kept>(ctx, 'keep_keys', async (write) => {
    const own = keyFaults(wanted, wanted.expiresAt, ctx.now).map(({ at, detail }) => ({ pointer: `/${at}`, detail }));
    const errors = [...own, ...(await unknownVessels(write.tx, wanted.vesselIds))];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    if (!mayKeep(ctx.actor, wanted)) return refused({ kind: 'forbidden' });
    const key = newKey(ctx, token.id, endOf(token.text), wanted);
    await insertApiKey(write.tx, token, key);
    audit(write, { verb: 'make_api_key', subject: 'api_key', subjectId: key.id, before: null, after: key });
    return done(key);
  });
  return keyToldOnce<'forbidden' | 'invalid' | 'key_reused'>(result, token.text);
}

/** For the one who makes or renews it. */
export const keyToldOnce = <K extends FailureKind>(
  result: Result<ApiKeyRecord, K>,
  text: string,
): Result<TextOfKey, K> => toldOnce(result, text, (key, told) => ({ key, text: told }));

function newKey(ctx: ActionContext, id: string, endsWith: string, wanted: NewKey): ApiKeyRecord {
  const { name, role, vesselIds, permissions, expiresAt } = wanted;
  return {
    ...{ id, name, role, vesselIds, permissions, endsWith },
    madeBy: actorText(ctx.actor),
    createdAt: ctx.now.toISOString(),
    expiresAt: expiresAt.toISOString(),
    previousUntil: null,
    lastUsedAt: null,
    revokedAt: null,
    version: 1,
  };
}
