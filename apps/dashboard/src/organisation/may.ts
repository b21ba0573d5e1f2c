/** Which acts a role is offered. The API decides; this only leaves out what it would refuse. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { useQuery } from '@tanstack/react-query';
import { sessionQuery } from './session.query.ts';

export type Role = components['schemas']['RoleCode'];

const ROLES_THAT_MAY = {
  recordFacts: ['owner', 'manager', 'surveyor', 'yard'],
  keepRegister: ['owner', 'manager'],
  keepRules: ['owner', 'manager'],
  managePeople: ['owner', 'manager'],
  keepKeys: ['owner', 'manager'],
  readAudit: ['owner', 'manager'],
  share: ['owner', 'manager'],
} as const satisfies Record<string, readonly Role[]>;

export type May = { readonly [Act in keyof typeof ROLES_THAT_MAY]: boolean };

export const rolesThatMay = (act: keyof May): readonly Role[] => ROLES_THAT_MAY[act];

export function useMay(): May {
  const role = useQuery(sessionQuery()).data?.role;
  const may = (act: keyof May) => role !== undefined && rolesThatMay(act).includes(role);
  return {
    recordFacts: may('recordFacts'),
    keepRegister: may('keepRegister'),
    keepRules: may('keepRules'),
    managePeople: may('managePeople'),
    keepKeys: may('keepKeys'),
    readAudit: may('readAudit'),
    share: may('share'),
  };
}
