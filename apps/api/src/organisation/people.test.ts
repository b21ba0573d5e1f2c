import type { Person, PersonPage } from '@garboard/contract/organisation/person.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import type { VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { type Client, comeIn, signedInPerson } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { aPerson } from '@garboard/tests/support/people.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const V1 = { 'if-match': '"1"' };
const change = (by: Client, personId: string, body: unknown, headers = V1) =>
  by.patch<Person>(`/v1/people/${personId}`, body, headers);
const remove = (by: Client, personId: string, headers = V1) =>
  by.post(`/v1/people/${personId}/removal`, { reason: 'The season is over.' }, headers);

describe('who works here', () => {
  it('is known to everybody; addresses only to those who manage people', async () => {
    const owner = await signedInPerson();
    const viewer = await signedInPerson({ role: 'viewer' }, owner.organisation);

    const [seenByOwner, seenByViewer] = [
      (await owner.get<PersonPage>('/v1/people')).body.items,
      (await viewer.get<PersonPage>('/v1/people')).body.items,
    ];

    expect(seenByOwner.map(({ email }) => email)).toEqual([owner.person.email, viewer.person.email]);
    expect(seenByViewer.map(({ name, email, role }) => [name, email, role])).toEqual([
      ['Ines Falk', undefined, 'owner'],
      ['Ines Falk', undefined, 'viewer'],
    ]);
  });

  it('comes in pages', async () => {
    const owner = await signedInPerson();
    await aPerson(owner.organisation, { role: 'viewer' });
    const first = (await owner.get<PersonPage>('/v1/people?limit=1')).body;
    const second = (await owner.get<PersonPage>(`/v1/people?limit=1&cursor=${first.nextCursor}`)).body;
    expect([first.items.length, second.items.length, second.nextCursor]).toEqual([1, 1, null]);
    expect(second.items[0]?.id).not.toBe(first.items[0]?.id);
  });
});

describe('what somebody may', () => {
  it('counts from their next request on', async () => {
    const owner = await signedInPerson();
    const other = await signedInPerson({ role: 'viewer' }, owner.organisation);
    expect((await other.post('/v1/vessels', { name: 'Teal' })).status).toBe(403);

    const { status, body, headers } = await change(owner, other.person.id, { role: 'manager' });

    expect([status, body.role, headers.get('etag')]).toEqual([200, 'manager', '"2"']);
    expect((await other.post('/v1/vessels', { name: 'Teal' })).status).toBe(201);
  });

  it('can be narrowed to some vessels: the others are not there', async () => {
    const owner = await signedInPerson();
    const [hers, another] = [await aVessel(owner.organisation.ctx()), await aVessel(owner.organisation.ctx())];
    const { item } = await anItem(owner.organisation.ctx(), another.id, 'liferaft');
    const yard = await signedInPerson({ role: 'yard' }, owner.organisation);
    expect((await yard.get<VesselPage>('/v1/vessels')).body.items).toHaveLength(2);

    expect((await change(owner, yard.person.id, { vesselIds: [hers.id] })).status).toBe(200);

    expect((await yard.get<VesselPage>('/v1/vessels')).body.items.map(({ id }) => id)).toEqual([hers.id]);
    expect((await yard.get(`/v1/vessels/${another.id}`)).status).toBe(404);
    const fact = { fact: 'serviced', on: '2026-01-02' };
    expect((await yard.post(`/v1/items/${item.id}/facts`, fact)).status).toBe(404);
    expect((await yard.get<Session>('/v1/session')).body.vesselIds).toEqual([hers.id]);
    expect((await change(owner, yard.person.id, { vesselIds: null }, { 'if-match': '"2"' })).status).toBe(200);
    expect((await yard.get(`/v1/vessels/${another.id}`)).status).toBe(200);
  });

  it('is refused where it is not sound, naming every fault', async () => {
    const owner = await signedInPerson();
    const { id } = await aPerson(owner.organisation, { role: 'viewer' });
    const theirs = await aVessel((await mintOrganisation(pools)).ctx());

    const faultsOf = async (body: unknown) => {
      const answer = await change(owner, id, body);
      expect(answer.status).toBe(422);
      return (answer.body as unknown as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer);
    };

    expect(await faultsOf({ role: 'manager', vesselIds: [theirs.id] })).toEqual(['/vesselIds', '/vesselIds/0']);
    expect(await faultsOf({ vesselIds: [] })).toEqual(['/vesselIds']);
    expect(await faultsOf({ role: 'captain' })).toEqual(['/role']);
    expect(await faultsOf({ email: 'x@example.org' })).toEqual(['/email']);
  });

  it('is changed on the version that was read, and only on one', async () => {
    const owner = await signedInPerson();
    const { id } = await aPerson(owner.organisation, { role: 'viewer' });
    expect((await change(owner, id, { role: 'yard' }, { 'if-match': '"7"' })).status).toBe(412);
    expect((await owner.patch(`/v1/people/${id}`, { role: 'yard' })).status).toBe(428);
    expect((await owner.get<Person>(`/v1/people/${id}`)).body.role).toBe('viewer');
  });

  it('is not a manager’s to decide about owners', async () => {
    const manager = await signedInPerson({ role: 'manager' });
    const owner = await aPerson(manager.organisation);
    await aPerson(manager.organisation);
    const viewer = await aPerson(manager.organisation, { role: 'viewer' });

    expect((await change(manager, owner.id, { role: 'viewer' })).status).toBe(403);
    expect((await remove(manager, owner.id)).status).toBe(403);
    expect((await change(manager, viewer.id, { role: 'owner' })).status).toBe(403);
    expect((await change(manager, viewer.id, { role: 'yard' })).status).toBe(200);
  });
});

describe('the last owner', () => {
  it('can neither become something else, nor be removed, nor leave', async () => {
    const owner = await signedInPerson();
    await aPerson(owner.organisation, { role: 'manager' });

    expect((await change(owner, owner.person.id, { role: 'viewer' })).status).toBe(409);
    expect((await remove(owner, owner.person.id)).status).toBe(409);
    expect((await owner.post('/v1/organisation/leaving', {})).status).toBe(409);
    expect((await owner.get<Session>('/v1/session')).body.role).toBe('owner');
  });

  it('is one of two who give it up at once', async () => {
    const one = await signedInPerson();
    const two = await signedInPerson({}, one.organisation);

    const answers = await Promise.all([
      change(one, one.person.id, { role: 'viewer' }),
      change(two, two.person.id, { role: 'viewer' }),
    ]);

    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
  });

  it('is one of two who remove each other at once', async () => {
    const one = await signedInPerson();
    const two = await signedInPerson({}, one.organisation);

    const answers = await Promise.all([remove(one, two.person.id), remove(two, one.person.id)]);

    const still = [await one.get<Session>('/v1/session'), await two.get<Session>('/v1/session')];
    expect(still.filter(({ body }) => body.role === 'owner')).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 204)).toHaveLength(1);
  });
});

describe('somebody who is removed', () => {
  it('is refused with the next request, and keeps their account', async () => {
    const owner = await signedInPerson();
    const other = await signedInPerson({ role: 'surveyor' }, owner.organisation);
    expect((await other.get('/v1/vessels')).status).toBe(200);

    expect((await remove(owner, other.person.id)).status).toBe(204);

    expect((await other.get('/v1/vessels')).status).toBe(403);
    expect((await other.get<Session>('/v1/session')).body).toEqual({ person: other.person, permissions: [] });
    expect((await owner.get(`/v1/people/${other.person.id}`)).status).toBe(404);
    expect((await remove(owner, other.person.id)).status).toBe(404);
  });

  it('can come back, with what is granted then', async () => {
    const owner = await signedInPerson();
    const person = await aPerson(owner.organisation, { role: 'manager' });
    await remove(owner, person.id);
    await aPerson(owner.organisation, { role: 'viewer', email: person.email });
    expect((await (await comeIn(owner.organisation, person)).get<Session>('/v1/session')).body.role).toBe('viewer');
  });

  it('leaves their mark in the audit, without name or address', async () => {
    const owner = await signedInPerson();
    const person = await aPerson(owner.organisation, { role: 'yard' });
    await change(owner, person.id, { role: 'viewer' });
    await remove(owner, person.id, { 'if-match': '"2"' });

    const rows = await inOrganisation(pools.app, wholeFleet(owner.organisation.id), (tx) =>
      tx.selectFrom('audit').selectAll().where('subject_id', '=', person.id).orderBy('id').execute(),
    );

    expect(rows.map(({ verb, actor }) => [verb, actor.replace(owner.person.id, 'the owner')])).toEqual([
      ['join', 'upkeep:00000000-0000-7000-8000-000000000000'],
      ['change_person', 'person:the owner'],
      ['remove_person', 'person:the owner'],
    ]);
    expect(JSON.stringify(rows)).not.toMatch(/Ines|example[.]org/);
  });
});
