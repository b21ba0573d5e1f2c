/** Whether what is to be granted is sound here. */
import { knownVessels } from '@garboard/db/organisation/memberships.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { type Grant, grantFaults } from '@garboard/domain/organisation/membership.ts';
import type { Fault } from '../result.ts';

export async function faultsOfGrant(tx: Scoped, grant: Grant): Promise<Fault[]> {
  const faults = grantFaults(grant).map(({ at, detail }) => ({ pointer: `/${at}`, detail }));
  if (grant.vesselIds === 'all') return faults;
  const known = await knownVessels(tx, grant.vesselIds);
  const unknown = grant.vesselIds.flatMap((id, index) =>
    known.has(id) ? [] : [{ pointer: `/vesselIds/${index}`, detail: 'is no vessel of this organisation' }],
  );
  return [...faults, ...unknown];
}
