/** Which role may do what. The one table; routes, screens and docs/roles.md read it. */

export const ROLES = ['owner', 'manager', 'surveyor', 'yard', 'viewer'] as const;
export type Role = (typeof ROLES)[number];

export type Permission =
  | 'read'
  | 'record_facts'
  | 'keep_register'
  | 'answer_findings'
  | 'put_off_findings'
  | 'verify_findings'
  | 'survey'
  | 'take_originals'
  | 'keep_rules'
  | 'manage_people'
  | 'read_audit'
  | 'share'
  | 'keep_keys'
  | 'keep_organisation';

type Entry = { readonly roles: readonly Role[]; readonly words: string };

/** `words` completes "may". */
const TABLE: Record<Permission, Entry> = {
  read: { roles: ROLES, words: 'read the register, the due list, the rules and who works here' },
  record_facts: {
    roles: ['owner', 'manager', 'surveyor', 'yard'],
    words: 'record facts about things aboard and what happened to a vessel',
  },
  keep_register: {
    roles: ['owner', 'manager'],
    words: 'enter and change vessels, items, situations and figures of the organisation’s own',
  },
  answer_findings: {
    roles: ['owner', 'manager', 'surveyor', 'yard'],
    words: 'enter findings, say what was seen of them, and propose, plan, begin and report the work',
  },
  put_off_findings: {
    roles: ['owner', 'manager'],
    words: 'put a finding off or accept it as it is, and set the terms',
  },
  verify_findings: {
    roles: ['owner', 'manager', 'surveyor'],
    words: 'verify work that somebody else did, and close or reopen a finding',
  },
  survey: {
    roles: ['owner', 'manager', 'surveyor'],
    words: 'keep survey visits: what was walked, seen, measured, not examined, and who must look closer',
  },
  take_originals: {
    roles: ['owner', 'manager', 'surveyor'],
    words: 'take a photograph as it came, with the position and the camera that it may tell',
  },
  keep_rules: { roles: ['owner', 'manager'], words: 'keep the organisation’s own rules' },
  manage_people: { roles: ['owner', 'manager'], words: 'invite people, change what they may, and remove them' },
  read_audit: { roles: ['owner', 'manager'], words: 'read who changed what' },
  share: { roles: ['owner', 'manager'], words: 'show vessels or the due list to an outsider by a link' },
  keep_keys: { roles: ['owner', 'manager'], words: 'make, renew and revoke the keys of programs' },
  keep_organisation: { roles: ['owner'], words: 'change the organisation’s name and time zone' },
};

export const PERMISSIONS = Object.keys(TABLE) as readonly Permission[];

export function may(role: Role, permission: Permission): boolean {
  return TABLE[permission].roles.includes(role);
}

/** What a credential may: all that its role may, or of that only some. */
export type Rights = { readonly role: Role; readonly only?: readonly Permission[] };

export function allows({ role, only }: Rights, permission: Permission): boolean {
  return may(role, permission) && (only?.includes(permission) ?? true);
}

export const permissionsOf = (rights: Rights): Permission[] =>
  PERMISSIONS.filter((permission) => allows(rights, permission));
export const wordsOf = (permission: Permission): string => TABLE[permission].words;
