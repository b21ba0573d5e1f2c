/** What a program's key may be made for. */
import { lifetimeFaults } from '../organisation/lifetime.ts';
import { type Grant, type GrantFault, grantFaults, mayAssign } from '../organisation/membership.ts';
import { allows, type Permission, permissionsOf, type Rights } from '../organisation/permission.ts';

/** `permissions`: `'all'` that its role may, or only these of them. */
export type KeyGrant = Grant & { readonly permissions: 'all' | readonly Permission[] };
export type KeyFault = { readonly at: GrantFault['at'] | 'permissions' | 'expiresAt'; readonly detail: string };

/** House convention, no source: a key that nobody renews for a year is a key that nobody looks after. */
const LONGEST_LIFE_DAYS = 366;
export const rightsOf = ({ role, permissions }: KeyGrant): Rights =>
  permissions === 'all' ? { role } : { role, only: permissions };

export function keyFaults(key: KeyGrant, expiresAt: Date, now: Date): KeyFault[] {
  return [...grantFaults(key), ...permissionFaults(key), ...keyEndFaults(expiresAt, now)];
}

function permissionFaults({ role, permissions }: KeyGrant): KeyFault[] {
  if (permissions === 'all') return [];
  const beyond = permissions.filter((permission) => !allows({ role }, permission));
  return [
    ...beyond.map((permission) => ({ at: 'permissions' as const, detail: `${permission} is not ${role}’s to have` })),
    ...(permissions.includes('read')
      ? []
      : [{ at: 'permissions' as const, detail: 'must have read: every answer is one' }]),
  ];
}

/** A key that is renewed keeps what it is for; only its end is new. */
export const keyEndFaults = (expiresAt: Date, now: Date) => lifetimeFaults(expiresAt, now, LONGEST_LIFE_DAYS);

/** Nobody makes, renews or revokes a key that may more than they themselves. */
export function mayKeep(by: Rights, key: KeyGrant): boolean {
  const its = permissionsOf(rightsOf(key));
  return mayAssign(by.role, null, key.role) && its.every((permission) => allows(by, permission));
}
