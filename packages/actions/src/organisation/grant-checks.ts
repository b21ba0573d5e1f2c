/** Whether what is to be granted is sound here. */
import { knownVessels } from '@garboard/db/organisation/memberships.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { type Grant, grantFaults, type Vessels } from '@garboard/domain/organisation/membership.ts';
import type { Fault } from '../result.ts';

export async function faultsOfGrant(tx: Scoped, grant: Grant): Promise<Fault[]> {
  const faults = grantFaults(grant).map(({ at, detail }) => ({ pointer: `/${at}`, detail }));
  return [...faults, ...(await unknownVessels(tx, grant.vesselIds))];
}

/** A fault for each that is no vessel of the scope. */
export async function unknownVessels(tx: Scoped, vesselIds: Vessels): Promise<Fault[]> {
  if (vesselIds === 'all') return [];
  const known = await knownVessels(tx, vesselIds);
  return vesselIds.flatMap((id, index) =>
    known.has(id) ? [] : [{ pointer: `/vesselIds/${index}`, detail: 'is no vessel of this organisation' }],
  );
}
