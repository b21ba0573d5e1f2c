/** The record that lets a repeated request have one effect. */
import type { Scoped } from '../scope.ts';

export type OnceKey = { readonly organisationId: string; readonly credentialId: string; readonly key: string };

/**
 * Claims the key for this transaction. `false` when it is taken: a rival that is still under way is waited
 * for, because the unique index lets only one of them commit.
 */
export async function claimKey(tx: Scoped, once: OnceKey, fingerprint: Buffer, now: Date): Promise<boolean> {
  const { numInsertedOrUpdatedRows } = await tx
    .insertInto('idempotency')
    .values({
      organisation_id: once.organisationId,
      credential_id: once.credentialId,
      key: once.key,
      fingerprint,
      value: null,
      created_at: now,
    })
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirstOrThrow();
  return numInsertedOrUpdatedRows === 1n;
}

export function loadKept(tx: Scoped, once: OnceKey): Promise<{ fingerprint: Buffer; value: unknown }> {
  return tx
    .selectFrom('idempotency')
    .select(['fingerprint', 'value'])
    .where('credential_id', '=', once.credentialId)
    .where('key', '=', once.key)
    .executeTakeFirstOrThrow();
}

export async function keepValue(tx: Scoped, once: OnceKey, value: unknown): Promise<void> {
  await tx
    .updateTable('idempotency')
    .set({ value: JSON.stringify(value) })
    .where('credential_id', '=', once.credentialId)
    .where('key', '=', once.key)
    .execute();
}

/** Keys older than `before` are forgotten: a repeat so late is a new request. Answers with how many. */
export async function forgetKeys(tx: Scoped, before: Date): Promise<number> {
  const { numDeletedRows } = await tx
    .deleteFrom('idempotency')
    .where('created_at', '<', before)
    .executeTakeFirstOrThrow();
  return Number(numDeletedRows);
}
