/** Invented people for the demo fleets. They have no password: a one-time link lets them in. */
import { createPerson } from '@garboard/actions/organisation/create-person.ts';
import type { OrganisationRecord } from '@garboard/db/organisation/organisations.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';

type Someone = {
  readonly name: string;
  readonly email: string;
  readonly role: Role;
  /** Only for these boats, by name. */
  readonly boats?: readonly string[];
};

/** By the fleet's name. The first is an owner. */
const PEOPLE: Readonly<Record<string, readonly Someone[]>> = {
  'Saltern Reach Sailing School': [
    { name: 'Hester Quillfeather', email: 'hester@saltern-reach.example', role: 'owner' },
    { name: 'Wilf Pennymoor', email: 'wilf@saltern-reach.example', role: 'manager' },
    { name: 'Ruth Callowmere', email: 'ruth@callowmere.example', role: 'surveyor' },
    { name: 'Nye Orchard', email: 'nye@saltern-reach.example', role: 'viewer' },
  ],
  'Tangskjær Boatyard': [
    { name: 'Sigrun Tangskjær', email: 'sigrun@tangskjaer.example', role: 'owner' },
    { name: 'Aslak Naustdal', email: 'aslak@tangskjaer.example', role: 'yard' },
    { name: 'Gro Ytrevoll', email: 'gro@ytrevoll.example', role: 'surveyor' },
    { name: 'Anne Sofie’s owner', email: 'owner@anne-sofie.example', role: 'viewer', boats: ['Anne Sofie'] },
  ],
  'Wrackholm Yachts': [
    { name: 'Morag Inverdale', email: 'morag@wrackholm.example', role: 'owner' },
    { name: 'Kenna Rossal', email: 'kenna@wrackholm.example', role: 'manager' },
    { name: 'Effie Strandlow', email: 'effie@strandlow.example', role: 'surveyor', boats: ['Samphire', 'Tansy'] },
    { name: 'Donnan Rigging', email: 'office@donnan-rigging.example', role: 'yard' },
    { name: 'Ruth Callowmere', email: 'ruth@callowmere.example', role: 'surveyor' },
  ],
};

/** Needs the owner's pool. `fleet`: the name without what an unfinished start has put behind it. */
export async function seedPeople(owner: Db, { id }: OrganisationRecord, fleet: string, now: Date): Promise<void> {
  for (const { boats, ...someone } of PEOPLE[fleet] ?? []) {
    const vesselIds = boats ? await idsOf(owner, id, boats) : 'all';
    const result = await createPerson(owner, { ...someone, organisationId: id, vesselIds, now });
    if (!result.ok) throw new Error(`demo people: ${JSON.stringify(result.failure)}`);
  }
}

async function idsOf(owner: Db, organisationId: string, names: readonly string[]): Promise<string[]> {
  const rows = await inOrganisation(owner, wholeFleet(organisationId), (tx) =>
    tx
      .selectFrom('vessel')
      .select('id')
      .where('organisation_id', '=', organisationId)
      .where('name', 'in', [...names])
      .execute(),
  );
  return rows.map(({ id }) => id);
}
