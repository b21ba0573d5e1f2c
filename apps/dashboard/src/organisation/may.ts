/** Which acts a role is offered. The API decides; this only leaves out what it would refuse. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { ROLES_THAT_MAY } from '@garboard/client/generated/roles.ts';
import { useQuery } from '@tanstack/react-query';
import { sessionQuery } from './session.query.ts';

export type Role = components['schemas']['RoleCode'];
export type Permission = components['schemas']['PermissionCode'];

/** The screens' own names of what they ask for. */
const PERMISSION_OF = {
  recordFacts: 'record_facts',
  answerFindings: 'answer_findings',
  putOffFindings: 'put_off_findings',
  verifyFindings: 'verify_findings',
  survey: 'survey',
  takeOriginals: 'take_originals',
  keepRegister: 'keep_register',
  keepRules: 'keep_rules',
  managePeople: 'manage_people',
  keepKeys: 'keep_keys',
  readAudit: 'read_audit',
  share: 'share',
} as const satisfies Record<string, Permission>;

type Act = keyof typeof PERMISSION_OF;
export type May = { readonly [Each in Act]: boolean };

export const rolesThatMay = (act: Act): readonly Role[] => ROLES_THAT_MAY[PERMISSION_OF[act]];

export const permissionsOf = (role: Role): Permission[] =>
  (Object.keys(ROLES_THAT_MAY) as Permission[]).filter((each) =>
    (ROLES_THAT_MAY[each] as readonly Role[]).includes(role),
  );

export function useMay(): May {
  const permissions = useQuery(sessionQuery()).data?.permissions ?? [];
  const acts = Object.entries(PERMISSION_OF).map(([act, permission]) => [act, permissions.includes(permission)]);
  return Object.fromEntries(acts) as May;
}
