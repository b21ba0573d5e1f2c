/** What a program's key may be made for. */
import { type Grant, type GrantFault, grantFaults, mayAssign } from '../organisation/membership.ts';
import { allows, type Permission, permissionsOf, type Rights } from '../organisation/permission.ts';

/** `permissions`: `'all'` that its role may, or only these of them. */
export type KeyGrant = Grant & { readonly permissions: 'all' | readonly Permission[] };
export type KeyFault = { readonly at: GrantFault['at'] | 'permissions' | 'expiresAt'; readonly detail: string };

const DAY_MS = 86_400_000;
/** House convention, no source: a key that nobody renews for a year is a key that nobody looks after. */
const LONGEST_LIFE_DAYS = 366;
export const rightsOf = ({ role, permissions }: KeyGrant): Rights =>
  permissions === 'all' ? { role } : { role, only: permissions };

export function keyFaults(key: KeyGrant, expiresAt: Date, now: Date): KeyFault[] {
  return [...grantFaults(key), ...permissionFaults(key), ...lifeFaults(expiresAt, now)];
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

function lifeFaults(expiresAt: Date, now: Date): KeyFault[] {
  const left = expiresAt.getTime() - now.getTime();
  if (left <= 0) return [{ at: 'expiresAt', detail: 'must lie ahead' }];
  return left <= LONGEST_LIFE_DAYS * DAY_MS
    ? []
    : [{ at: 'expiresAt', detail: `must lie within ${LONGEST_LIFE_DAYS} days` }];
}

/** Nobody makes, renews or revokes a key that may more than they themselves. */
export function mayKeep(by: Rights, key: KeyGrant): boolean {
  const its = permissionsOf(rightsOf(key));
  return mayAssign(by.role, null, key.role) && its.every((permission) => allows(by, permission));
}
