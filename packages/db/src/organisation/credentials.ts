/** Looking up what a token stands for, inside the scope of the organisation that it names. */
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import type { Scoped } from '../scope.ts';
import { hashSecret, isSecretOf, type Token } from './token.ts';

export type ApiKey = { readonly id: string; readonly role: Role };

/** `null` when it never was, is revoked, or has run out. */
export async function findApiKey(tx: Scoped, token: Token, now: Date): Promise<ApiKey | null> {
  const found = await tx
    .selectFrom('api_key')
    .select(['id', 'role', 'secret_hash'])
    .where('organisation_id', '=', token.organisationId)
    .where('id', '=', token.id)
    .where('revoked_at', 'is', null)
    .where('expires_at', '>', now)
    .executeTakeFirst();
  const role = ROLES.find((each) => each === found?.role);
  return found && role && isSecretOf(token.secret, found.secret_hash) ? { id: found.id, role } : null;
}

export type NewSecret = { readonly token: Token; readonly now: Date; readonly expiresAt: Date };

const row = ({ token, now, expiresAt }: NewSecret) => ({
  organisation_id: token.organisationId,
  id: token.id,
  secret_hash: hashSecret(token.secret),
  created_at: now,
  expires_at: expiresAt,
});

export async function insertApiKey(tx: Scoped, secret: NewSecret & { role: Role; name: string }): Promise<void> {
  await tx
    .insertInto('api_key')
    .values({ ...row(secret), role: secret.role, name: secret.name })
    .execute();
}

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

export async function revokeApiKey(tx: Scoped, keyId: string, now: Date): Promise<boolean> {
  const { numUpdatedRows } = await tx
    .updateTable('api_key')
    .set({ revoked_at: now })
    .where('id', '=', keyId)
    .where('revoked_at', 'is', null)
    .executeTakeFirst();
  return numUpdatedRows === 1n;
}
