/** Ends a membership: somebody is removed, or leaves. Their next request is refused. */
import {
  endMembership,
  listOwners,
  lockMembership,
  type MembershipRecord,
} from '@garboard/db/organisation/memberships.ts';
import { lockOrganisation } from '@garboard/db/organisation/organisations.ts';
import { leavesNoOwner, mayAssign } from '@garboard/domain/organisation/membership.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, type Failure, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { LAST_OWNER } from './change-member.ts';

export type MemberToRemove = {
  readonly personId: string;
  readonly expectedVersion: number;
  readonly reason: string;
};
export type Removed = { readonly personId: string };

export function removeMember(
  ctx: ActionContext,
  { personId, expectedVersion, reason }: MemberToRemove,
): Promise<Written<Removed, 'not_found' | 'stale' | 'conflict'>> {
  return write(ctx, 'manage_people', async (write) => {
    await lockOrganisation(write.tx);
    const before = await lockMembership(write.tx, personId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (!mayAssign(ctx.actor.role, before.role, null)) return refused({ kind: 'forbidden' });
    const failure = await end(write, before, 'remove_person', reason);
    return failure ? refused(failure) : done({ personId });
  });
}

/** Everybody may leave but the last owner. A program's key belongs to nobody and cannot. */
export function leaveOrganisation(ctx: ActionContext): Promise<Written<Removed, 'conflict'>> {
  return write(ctx, 'read', async (write) => {
    if (ctx.actor.kind !== 'person') return refused({ kind: 'forbidden' });
    const failure = await endOwn(write, ctx.actor.id, 'leave');
    return failure ? refused(failure) : done({ personId: ctx.actor.id });
  });
}

type Conflict = Extract<Failure, { kind: 'conflict' }>;

/** The person's own membership in the organisation of the scope. */
export async function endOwn(write: Write, personId: string, verb: 'leave' | 'erase_person'): Promise<Conflict | null> {
  await lockOrganisation(write.tx);
  const before = await lockMembership(write.tx, personId);
  return before ? end(write, before, verb, null) : null;
}

async function end(
  write: Write,
  before: MembershipRecord,
  verb: string,
  reason: string | null,
): Promise<Conflict | null> {
  if (leavesNoOwner(await listOwners(write.tx), before.personId, null)) return { kind: 'conflict', detail: LAST_OWNER };
  await endMembership(write.tx, before, write.ctx.now);
  const after = reason === null ? null : { reason };
  audit(write, { verb, subject: 'person', subjectId: before.personId, before, after });
  return null;
}
