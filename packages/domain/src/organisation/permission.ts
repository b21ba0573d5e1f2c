/** Which role may do what. The one table; routes and docs read it. */

export const ROLES = ['owner', 'manager', 'surveyor', 'yard', 'viewer'] as const;
export type Role = (typeof ROLES)[number];

export type Permission = 'read' | 'record_facts' | 'keep_register' | 'keep_rules' | 'read_audit';

const MAY: Record<Permission, readonly Role[]> = {
  read: ROLES,
  record_facts: ['owner', 'manager', 'surveyor', 'yard'],
  keep_register: ['owner', 'manager'],
  keep_rules: ['owner', 'manager'],
  read_audit: ['owner', 'manager'],
};

export function may(role: Role, permission: Permission): boolean {
  return MAY[permission].includes(role);
}
