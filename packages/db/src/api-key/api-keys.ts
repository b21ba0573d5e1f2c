/** The keys of programs of the organisation of the scope. Only hashes of their secrets are here. */
import type { KeyGrant } from '@garboard/domain/api-key/api-key.ts';
import { PERMISSIONS } from '@garboard/domain/organisation/permission.ts';
import { type Selectable, sql } from 'kysely';
import { columnsOf, grantOf } from '../organisation/memberships.ts';
import { endOf, hashSecret, isSecretOf, type Token } from '../organisation/token.ts';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { ApiKeyTable } from './tables.ts';

export type ApiKeyRecord = KeyGrant & {
  readonly id: string;
  readonly name: string;
  readonly endsWith: string | null;
  readonly madeBy: string | null;
  readonly createdAt: string;
  readonly expiresAt: string;
  /** Until then the secret before this one works too. */
  readonly previousUntil: string | null;
  readonly lastUsedAt: string | null;
  readonly revokedAt: string | null;
  readonly version: number;
};

const keys = (tx: Scoped) =>
  tx
    .selectFrom('api_key as k')
    .leftJoin('api_key_use as u', 'u.key_id', 'k.id')
    .selectAll('k')
    .select('u.last_used_at');

/** Revoked ones too: what a program did stays known by its key. */
export async function listApiKeys(tx: Scoped, limit: number, after?: { id: string }): Promise<Page<ApiKeyRecord>> {
  let query = keys(tx)
    .orderBy('k.id', 'desc')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('k.id', '<', after.id);
  return pageOf((await query.execute()).map(toRecord), limit);
}

export async function loadApiKey(tx: Scoped, id: string): Promise<ApiKeyRecord | null> {
  const row = await keys(tx).where('k.id', '=', id).executeTakeFirst();
  return row ? toRecord(row) : null;
}

export async function lockApiKey(tx: Scoped, id: string): Promise<ApiKeyRecord | null> {
  const row = await keys(tx).where('k.id', '=', id).forUpdate('k').executeTakeFirst();
  return row ? toRecord(row) : null;
}

type Minted = Token & { readonly text: string };

export async function insertApiKey(tx: Scoped, token: Minted, record: ApiKeyRecord): Promise<void> {
  await tx
    .insertInto('api_key')
    .values({
      organisation_id: token.organisationId,
      id: token.id,
      name: record.name,
      ...columnsOf(record),
      permissions: record.permissions === 'all' ? null : [...record.permissions],
      secret_hash: hashSecret(token.secret),
      ends_with: endOf(token.text),
      made_by: record.madeBy,
      created_at: record.createdAt,
      expires_at: record.expiresAt,
    })
    .execute();
}

/** A new secret; the one before goes on until `previousUntil`, and what was before that one is over. */
export async function renewApiKey(tx: Scoped, token: Minted, record: ApiKeyRecord): Promise<void> {
  await tx
    .updateTable('api_key')
    .set((eb) => ({
      previous_hash: record.previousUntil === null ? null : eb.ref('secret_hash'),
      previous_until: record.previousUntil,
      secret_hash: hashSecret(token.secret),
      ends_with: record.endsWith,
      expires_at: record.expiresAt,
      version: record.version,
    }))
    .where('id', '=', record.id)
    .execute();
}

export async function revokeApiKey(tx: Scoped, { id, version }: ApiKeyRecord, now: Date): Promise<void> {
  await tx
    .updateTable('api_key')
    .set({ revoked_at: now, previous_hash: null, previous_until: null, version: version + 1 })
    .where('id', '=', id)
    .execute();
}

/** `null` when it never was, is revoked, or has run out. */
export async function findApiKey(tx: Scoped, token: Token, now: Date): Promise<ApiKeyRecord | null> {
  const row = await keys(tx)
    .where('k.organisation_id', '=', token.organisationId)
    .where('k.id', '=', token.id)
    .where('k.revoked_at', 'is', null)
    .where('k.expires_at', '>', now)
    .executeTakeFirst();
  return row && opens(row, token.secret, now) ? toRecord(row) : null;
}

function opens(row: Selectable<ApiKeyTable>, secret: Buffer, now: Date): boolean {
  if (isSecretOf(secret, row.secret_hash)) return true;
  const { previous_hash: previous, previous_until: until } = row;
  return previous !== null && until !== null && until > now && isSecretOf(secret, previous);
}

const MINUTE_MS = 60_000;

/** To the minute is enough, and keeps reading from being writing. */
export async function noteUse(tx: Scoped, organisationId: string, key: ApiKeyRecord, now: Date): Promise<void> {
  if (key.lastUsedAt !== null && now.getTime() - Date.parse(key.lastUsedAt) < MINUTE_MS) return;
  await tx
    .insertInto('api_key_use')
    .values({ organisation_id: organisationId, key_id: key.id, last_used_at: now })
    .onConflict((conflict) => conflict.columns(['organisation_id', 'key_id']).doUpdateSet({ last_used_at: now }))
    .execute();
}

function toRecord(row: Selectable<ApiKeyTable> & { last_used_at: Date | null }): ApiKeyRecord {
  const { permissions } = row;
  return {
    ...grantOf(row),
    permissions: permissions === null ? 'all' : PERMISSIONS.filter((each) => permissions.includes(each)),
    id: row.id,
    name: row.name,
    endsWith: row.ends_with,
    madeBy: row.made_by,
    createdAt: row.created_at.toISOString(),
    expiresAt: row.expires_at.toISOString(),
    previousUntil: row.previous_until?.toISOString() ?? null,
    lastUsedAt: row.last_used_at?.toISOString() ?? null,
    revokedAt: row.revoked_at?.toISOString() ?? null,
    version: row.version,
  };
}
