/** What a person is to an organisation, and which changes of that are sound. */
import type { Role } from './permission.ts';

/** `'all'`: the whole fleet, vessels that come later too. */
export type Vessels = 'all' | readonly string[];
export type Grant = { readonly role: Role; readonly vesselIds: Vessels };
export type GrantFault = { readonly at: 'role' | 'vesselIds'; readonly detail: string };

/** Whoever keeps the register or the people keeps all of it. */
const FOR_THE_WHOLE_FLEET: readonly Role[] = ['owner', 'manager'];

export function grantFaults({ role, vesselIds }: Grant): GrantFault[] {
  if (vesselIds === 'all') return [];
  if (FOR_THE_WHOLE_FLEET.includes(role))
    return [{ at: 'vesselIds', detail: `cannot be narrowed for ${role}: the role is for the whole fleet` }];
  return vesselIds.length > 0 ? [] : [{ at: 'vesselIds', detail: 'must name at least one vessel' }];
}

/** Only an owner makes an owner, or changes what another owner may. `null`: not a member before, or not after. */
export function mayAssign(by: Role, before: Role | null, after: Role | null): boolean {
  return by === 'owner' || (by === 'manager' && before !== 'owner' && after !== 'owner');
}

/** Whether nobody would own the organisation any more if `personId` became `after`. `owners`: those of now. */
export function leavesNoOwner(owners: readonly string[], personId: string, after: Role | null): boolean {
  return after !== 'owner' && owners.length === 1 && owners[0] === personId;
}
