/** Invitations of the organisation of the scope. Each is for one address, works once, and runs out. */
import type { Grant } from '@garboard/domain/organisation/membership.ts';
import type { Selectable } from 'kysely';
import { sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { columnsOf, grantOf } from './memberships.ts';
import type { InvitationTable } from './tables.ts';
import { hashSecret, isSecretOf, type Token } from './token.ts';

/** `email` is `null` once nobody needs it any more. */
export type InvitationRecord = Grant & {
  readonly id: string;
  readonly email: string | null;
  readonly invitedBy: string;
  readonly createdAt: string;
  readonly expiresAt: string;
  readonly acceptedAt: string | null;
  readonly withdrawnAt: string | null;
  readonly version: number;
};

/** Those that can still be accepted, or have run out unanswered. */
export async function listOpenInvitations(
  tx: Scoped,
  limit: number,
  after?: { id: string },
): Promise<Page<InvitationRecord>> {
  let query = open(tx)
    .orderBy('id')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('id', '>', after.id);
  return pageOf((await query.execute()).map(toRecord), limit);
}

const open = (tx: Scoped) =>
  tx.selectFrom('invitation').selectAll().where('accepted_at', 'is', null).where('withdrawn_at', 'is', null);

/** To the same address, still good. */
export async function findInvitationTo(tx: Scoped, email: string, now: Date): Promise<InvitationRecord | null> {
  const row = await open(tx).where('email', '=', email).where('expires_at', '>', now).executeTakeFirst();
  return row ? toRecord(row) : null;
}

export async function lockInvitation(tx: Scoped, id: string): Promise<InvitationRecord | null> {
  const row = await tx.selectFrom('invitation').selectAll().where('id', '=', id).forUpdate().executeTakeFirst();
  return row ? toRecord(row) : null;
}

/** Held until the transaction ends; `null` when the secret is not the invitation's, or nobody can accept it any more. */
export async function lockInvitationOf(tx: Scoped, token: Token, now: Date): Promise<InvitationRecord | null> {
  const row = await open(tx).where('id', '=', token.id).where('expires_at', '>', now).forUpdate().executeTakeFirst();
  return row && isSecretOf(token.secret, row.secret_hash) ? toRecord(row) : null;
}

/** The same without holding it. */
export async function findInvitationOf(tx: Scoped, token: Token, now: Date): Promise<InvitationRecord | null> {
  const row = await open(tx).where('id', '=', token.id).where('expires_at', '>', now).executeTakeFirst();
  return row && isSecretOf(token.secret, row.secret_hash) ? toRecord(row) : null;
}

export async function insertInvitation(tx: Scoped, token: Token, record: InvitationRecord): Promise<void> {
  await tx
    .insertInto('invitation')
    .values({
      organisation_id: token.organisationId,
      id: token.id,
      email: record.email,
      ...columnsOf(record),
      secret_hash: hashSecret(token.secret),
      invited_by: record.invitedBy,
      created_at: record.createdAt,
      expires_at: record.expiresAt,
    })
    .execute();
}

/** Accepted or withdrawn: the address is forgotten. */
export async function closeInvitation(
  tx: Scoped,
  { id, version }: InvitationRecord,
  how: 'accepted_at' | 'withdrawn_at',
  now: Date,
): Promise<void> {
  await tx
    .updateTable('invitation')
    .set({ [how]: now, email: null, version: version + 1 })
    .where('id', '=', id)
    .execute();
}

/** The address is forgotten; what was open is withdrawn by that. */
export async function eraseInvitationsTo(tx: Scoped, email: string): Promise<void> {
  await tx.updateTable('invitation').set({ email: null }).where('email', '=', email).execute();
}

function toRecord(row: Selectable<InvitationTable>): InvitationRecord {
  return {
    ...grantOf(row),
    id: row.id,
    email: row.email,
    invitedBy: row.invited_by,
    createdAt: row.created_at.toISOString(),
    expiresAt: row.expires_at.toISOString(),
    acceptedAt: row.accepted_at?.toISOString() ?? null,
    withdrawnAt: row.withdrawn_at?.toISOString() ?? null,
    version: row.version,
  };
}
