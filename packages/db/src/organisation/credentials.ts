/** Looking up who a token stands for, inside the scope of the organisation that it names. */
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import type { Scope, Scoped } from '../scope.ts';
import { hashSecret, isSecretOf, type Token } from './token.ts';

export type Credential = {
  readonly kind: 'api_key' | 'session';
  readonly id: string;
  readonly role: Role;
  readonly vesselIds: Scope['vesselIds'];
};
type Found = { id: string; role: string; secret_hash: Buffer };

/** `null` when it never was, is revoked, or has run out. */
export async function findCredential(tx: Scoped, token: Token, now: Date): Promise<Credential | null> {
  switch (token.kind) {
    case 'api_key':
      return credential('api_key', token, await findApiKey(tx, token, now));
    case 'session':
      return credential('session', token, await findSession(tx, token, now));
    case 'sign_in_link':
      return null;
  }
}

function credential(kind: Credential['kind'], token: Token, found: Found | undefined): Credential | null {
  const role = ROLES.find((each) => each === found?.role);
  const isGood = found && role && isSecretOf(token.secret, found.secret_hash);
  return isGood ? { kind, id: found.id, role, vesselIds: 'all' } : null;
}

function findApiKey(tx: Scoped, token: Token, now: Date): Promise<Found | undefined> {
  return tx
    .selectFrom('api_key')
    .select(['id', 'role', 'secret_hash'])
    .where('organisation_id', '=', token.organisationId)
    .where('id', '=', token.id)
    .where('revoked_at', 'is', null)
    .where('expires_at', '>', now)
    .executeTakeFirst();
}

function findSession(tx: Scoped, token: Token, now: Date): Promise<Found | undefined> {
  return tx
    .selectFrom('session')
    .select(['id', 'role', 'secret_hash'])
    .where('organisation_id', '=', token.organisationId)
    .where('id', '=', token.id)
    .where('expires_at', '>', now)
    .executeTakeFirst();
}

export type NewSecret = { readonly token: Token; readonly role: Role; readonly now: Date; readonly expiresAt: Date };

const row = ({ token, role, now, expiresAt }: NewSecret) => ({
  organisation_id: token.organisationId,
  id: token.id,
  role,
  secret_hash: hashSecret(token.secret),
  created_at: now,
  expires_at: expiresAt,
});

export async function insertApiKey(tx: Scoped, secret: NewSecret & { name: string }): Promise<void> {
  await tx
    .insertInto('api_key')
    .values({ ...row(secret), name: secret.name })
    .execute();
}

export async function insertSignInLink(tx: Scoped, secret: NewSecret): Promise<void> {
  await tx.insertInto('sign_in_link').values(row(secret)).execute();
}

export async function insertSession(tx: Scoped, secret: NewSecret): Promise<void> {
  await tx.insertInto('session').values(row(secret)).execute();
}

/** Marks the link as used and answers with its role; `null` when it is unknown, used or out of date. One caller wins. */
export async function takeSignInLink(tx: Scoped, token: Token, now: Date): Promise<Role | null> {
  const taken = await tx
    .updateTable('sign_in_link')
    .set({ used_at: now })
    .where('organisation_id', '=', token.organisationId)
    .where('id', '=', token.id)
    .where('secret_hash', '=', hashSecret(token.secret))
    .where('used_at', 'is', null)
    .where('expires_at', '>', now)
    .returning('role')
    .executeTakeFirst();
  return ROLES.find((role) => role === taken?.role) ?? null;
}

export async function deleteSession(tx: Scoped, sessionId: string): Promise<void> {
  await tx.deleteFrom('session').where('id', '=', sessionId).execute();
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

export async function deleteRunOutSessions(tx: Scoped, now: Date): Promise<number> {
  const { numDeletedRows } = await tx.deleteFrom('session').where('expires_at', '<=', now).executeTakeFirstOrThrow();
  return Number(numDeletedRows);
}
