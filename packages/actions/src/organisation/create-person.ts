/** A person made at the machine, with an address that the administrator vouches for. They come in by a one-time link. */
import { insertMembership } from '@garboard/db/organisation/memberships.ts';
import { findPersonId, insertPerson } from '@garboard/db/organisation/registered-people.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { type Grant, grantFaults } from '@garboard/domain/organisation/membership.ts';
import { audit } from '../audit.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused } from '../result.ts';
import { asUpkeep } from './as-upkeep.ts';

export type NewPerson = Grant & {
  readonly organisationId: string;
  readonly name: string;
  /** In any case; kept in lower case. */
  readonly email: string;
  readonly now: Date;
};

/** Answers with the person's id. Somebody with an account already keeps it, and their name. */
export async function createPerson(owner: Db, person: NewPerson): Promise<Result<string, 'invalid' | 'conflict'>> {
  const errors = grantFaults(person).map(({ at, detail }) => ({ pointer: `/${at}`, detail }));
  if (!/^[^@\s]+@[^@\s]+$/.test(person.email)) errors.push({ pointer: '/email', detail: 'must be an address' });
  if (errors.length > 0) return refused({ kind: 'invalid', errors });
  const { organisationId, role, vesselIds, now } = person;
  const email = person.email.toLowerCase();
  return inOrganisation(owner, wholeFleet(organisationId), async (tx) => {
    const known = await findPersonId(tx, email);
    const personId = known?.id ?? (await insertPerson(tx, { name: person.name, email }));
    if (known?.organisationIds.includes(organisationId))
      return refused({ kind: 'conflict', detail: 'Somebody with this address belongs to the organisation already.' });
    const membership = { id: newId(now), personId, role, vesselIds, joinedAt: now.toISOString() };
    await insertMembership(tx, organisationId, membership);
    const about = { subject: 'person', subjectId: personId, before: null, after: { role, vesselIds } } as const;
    audit(asUpkeep(owner, tx, organisationId, now), { verb: 'join', ...about });
    return done(personId);
  });
}
