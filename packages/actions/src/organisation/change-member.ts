/** Changes what a person may: their role, and the vessels it is for. */
import {
  listOwners,
  lockMembership,
  type MembershipRecord,
  updateMembership,
} from '@garboard/db/organisation/memberships.ts';
import { lockOrganisation } from '@garboard/db/organisation/organisations.ts';
import { type Grant, leavesNoOwner, mayAssign } from '@garboard/domain/organisation/membership.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { faultsOfGrant } from './grant-checks.ts';

export type MemberChange = {
  readonly personId: string;
  readonly expectedVersion: number;
  /** What is absent stays. */
  readonly change: Partial<Grant>;
};

export const LAST_OWNER = 'The organisation needs an owner: make somebody else one first.';

export function changeMember(
  ctx: ActionContext,
  { personId, expectedVersion, change }: MemberChange,
): Promise<Written<MembershipRecord, 'not_found' | 'stale' | 'invalid' | 'conflict'>> {
  return write(ctx, 'manage_people', async (write) => {
    await lockOrganisation(write.tx);
    const before = await lockMembership(write.tx, personId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    const after = { ...before, ...change, version: before.version + 1 };
    if (!mayAssign(ctx.actor.role, before.role, after.role)) return refused({ kind: 'forbidden' });
    const errors = await faultsOfGrant(write.tx, after);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    if (leavesNoOwner(await listOwners(write.tx), personId, after.role))
      return refused({ kind: 'conflict', detail: LAST_OWNER });
    await updateMembership(write.tx, after);
    audit(write, { verb: 'change_person', subject: 'person', subjectId: personId, before, after });
    return done(after);
  });
}
