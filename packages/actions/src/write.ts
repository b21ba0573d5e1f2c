/**
 * The fixed order of every write: permission, transaction in scope, the key of a repeat, the rule's own
 * work, the kept answer. A refusal rolls everything back.
 */
import { claimKey, keepValue, loadKept } from '@garboard/db/idempotency/idempotency.ts';
import { inOrganisation, type Scoped } from '@garboard/db/scope.ts';
import { allows, type Permission } from '@garboard/domain/organisation/permission.ts';
import type { ActionContext, Once } from './context.ts';
import { done, type Failure, type Refused, type Result, refused } from './result.ts';

export type Write = { readonly tx: Scoped; readonly ctx: ActionContext };

/** Thrown only to leave the transaction, and caught at its edge by `catchRefusal`. */
export class Refusal extends Error {
  readonly failure: Failure;
  constructor(failure: Failure) {
    super(failure.kind);
    this.failure = failure;
  }
}

export async function write<R extends Result<unknown>>(
  ctx: ActionContext,
  permission: Permission,
  work: Work<R>,
): Promise<R | Refused<'forbidden' | 'key_reused'>> {
  if (!allows(ctx.actor, permission)) return refused({ kind: 'forbidden' });
  return catchRefusal(() => inOrganisation(ctx.db, ctx, (tx) => writeOnce({ tx, ctx }, work)));
}

/** What is thrown to leave the transaction is one of R's own failures, or one that every write has. */
export async function catchRefusal<R extends Result<unknown>>(
  transaction: () => Promise<R>,
): Promise<R | Refused<'forbidden' | 'key_reused'>> {
  try {
    return await transaction();
  } catch (fault) {
    if (fault instanceof Refusal) return refused(fault.failure) as R | Refused<'forbidden' | 'key_reused'>;
    throw fault;
  }
}

/** The work inside a transaction that the caller has opened, with the key of a repeat. A refusal is thrown. */
export function writeOnce<R extends Result<unknown>>({ tx, ctx }: Write, work: Work<R>): Promise<R> {
  return ctx.once ? once(tx, ctx, ctx.once, work) : run(tx, ctx, work);
}

type Work<R> = (write: Write) => Promise<R>;

async function run<R extends Result<unknown>>(tx: Scoped, ctx: ActionContext, work: Work<R>): Promise<R> {
  const result = await work({ tx, ctx });
  if (!result.ok) throw new Refusal(result.failure);
  return result;
}

async function once<R extends Result<unknown>>(
  tx: Scoped,
  ctx: ActionContext,
  { key, fingerprint }: Once,
  work: Work<R>,
): Promise<R> {
  const place = { organisationId: ctx.organisationId, credentialId: ctx.actor.id, key };
  if (await claimKey(tx, place, fingerprint, ctx.now)) {
    const result = await run(tx, ctx, work);
    if (result.ok) await keepValue(tx, place, result.value);
    return result;
  }
  const kept = await loadKept(tx, place);
  if (!kept.fingerprint.equals(fingerprint)) throw new Refusal({ kind: 'key_reused' });
  return { ...done(kept.value), replayed: true } as R;
}
