/** Which acts a role is offered. The API decides; this only leaves out what it would refuse. */
import { useQuery } from '@tanstack/react-query';
import { sessionQuery } from './session.query.ts';

export type May = { readonly recordFacts: boolean; readonly keepRegister: boolean };

export function useMay(): May {
  const role = useQuery(sessionQuery()).data?.role;
  return {
    recordFacts: role !== undefined && role !== 'viewer',
    keepRegister: role === 'owner' || role === 'manager',
  };
}
