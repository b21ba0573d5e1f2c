/** One-time links, inside the scope of the organisation that they name. */
import type { Scoped } from '../scope.ts';
import { hashSecret, type Token } from './token.ts';

export type NewSecret = { readonly token: Token; readonly now: Date; readonly expiresAt: Date };

const row = ({ token, now, expiresAt }: NewSecret) => ({
  organisation_id: token.organisationId,
  id: token.id,
  secret_hash: hashSecret(token.secret),
  created_at: now,
  expires_at: expiresAt,
});

export async function insertSignInLink(tx: Scoped, secret: NewSecret & { personId: string }): Promise<void> {
  await tx
    .insertInto('sign_in_link')
    .values({ ...row(secret), person_id: secret.personId })
    .execute();
}

/** Marks the link as used and answers with its person; `null` when it is unknown, used or out of date. One caller wins. */
export async function takeSignInLink(tx: Scoped, token: Token, now: Date): Promise<string | null> {
  const taken = await tx
    .updateTable('sign_in_link')
    .set({ used_at: now })
    .where('organisation_id', '=', token.organisationId)
    .where('id', '=', token.id)
    .where('secret_hash', '=', hashSecret(token.secret))
    .where('used_at', 'is', null)
    .where('expires_at', '>', now)
    .returning('person_id')
    .executeTakeFirst();
  return taken?.person_id ?? null;
}
