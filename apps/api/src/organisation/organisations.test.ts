import type { Account } from '@garboard/contract/organisation/account.ts';
import type { BelongingPage, Organisation } from '@garboard/contract/organisation/organisation.ts';
import type { PersonPage } from '@garboard/contract/organisation/person.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { type PersonClient, signedIn, signedInPerson } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const V1 = { 'if-match': '"1"' };

describe('several organisations', () => {
  it('are founded, listed and switched between; each has its own role', async () => {
    const me = await signedInPerson({ role: 'viewer' });
    const made = await me.post<Organisation>('/v1/organisations', { name: 'Avocet Boats', timeZone: 'Europe/Oslo' });
    expect([made.status, made.headers.get('etag')]).toEqual([201, '"1"']);
    expect((await me.get<Session>('/v1/session')).body).toMatchObject({
      organisation: { id: made.body.id },
      role: 'owner',
    });

    const { items } = (await me.get<BelongingPage>('/v1/organisations')).body;
    expect(items.map(({ name, role }) => [name, role])).toEqual([
      ['Avocet Boats', 'owner'],
      [me.organisation.name, 'viewer'],
    ]);

    const back = await me.post('/v1/session/organisation', { organisationId: me.organisation.id });
    expect(back.status).toBe(200);
    expect((await me.get<Session>('/v1/session')).body).toMatchObject({
      organisation: { id: me.organisation.id },
      role: 'viewer',
    });
  });

  it('that one does not belong to are not there', async () => {
    const me = await signedInPerson();
    const elsewhere = await mintOrganisation(pools);
    const none = '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a';
    const same = { 'x-request-id': 'same' };

    const foreign = await me.post('/v1/session/organisation', { organisationId: elsewhere.id }, same);
    const missing = await me.post('/v1/session/organisation', { organisationId: none }, same);

    expect([foreign.status, foreign.text]).toEqual([404, missing.text]);
    expect((await me.get<Session>('/v1/session')).body.organisation?.id).toBe(me.organisation.id);
  });

  it('come in pages', async () => {
    const me = await signedInPerson();
    await me.post('/v1/organisations', { name: 'Avocet Boats', timeZone: 'UTC' });
    const first = (await me.get<BelongingPage>('/v1/organisations?limit=1')).body;
    const rest = (await me.get<BelongingPage>(`/v1/organisations?limit=1&cursor=${first.nextCursor}`)).body;
    expect([...first.items, ...rest.items].map(({ name }) => name)).toEqual(['Avocet Boats', me.organisation.name]);
    expect(rest.nextCursor).toBeNull();
  });

  it('are not doubled by a repeat, and a key does not stand for two', async () => {
    const me = await signedInPerson();
    const key = { 'idempotency-key': 'found-1' };
    const found = (name: string) => me.post<Organisation>('/v1/organisations', { name, timeZone: 'UTC' }, key);
    const [first, again] = [await found('Avocet Boats'), await found('Avocet Boats')];
    expect([again.status, again.body.id, again.headers.get('idempotency-replayed')]).toEqual([
      201,
      first.body.id,
      'true',
    ]);
    expect((await found('Other Boats')).status).toBe(422);
    expect((await me.get<BelongingPage>('/v1/organisations')).body.items).toHaveLength(2);
  });

  it('can be left; then the person is nowhere', async () => {
    const owner = await signedInPerson();
    const other = await signedInPerson({ role: 'yard' }, owner.organisation);
    expect((await other.post('/v1/organisation/leaving', {})).status).toBe(204);
    expect((await other.get<Session>('/v1/session')).body.organisation).toBeUndefined();
    expect((await other.get('/v1/people')).status).toBe(403);
    expect((await owner.get<PersonPage>('/v1/people')).body.items).toHaveLength(1);
  });
});

describe('the organisation', () => {
  it('gets another name and time zone from its owner', async () => {
    const owner = await signedInPerson();
    const at = await owner.get<Organisation>('/v1/organisation');
    expect([at.body.version, at.headers.get('etag')]).toEqual([1, '"1"']);

    const { status, body } = await owner.patch<Organisation>('/v1/organisation', { timeZone: 'Europe/Oslo' }, V1);

    expect([status, body]).toEqual([200, { ...at.body, timeZone: 'Europe/Oslo', version: 2 }]);
    expect((await owner.patch('/v1/organisation', { name: 'Late' }, V1)).status).toBe(412);
    expect((await owner.patch('/v1/organisation', { timeZone: 'Mars' }, V1)).status).toBe(422);
  });
});

describe('an account that is erased', () => {
  const erase = (person: PersonClient, email = person.person.email) => person.post('/v1/account/erasure', { email });

  it('leaves what it recorded, and nothing that says who it was', async () => {
    const owner = await signedInPerson();
    const vessel = await aVessel(owner.organisation.ctx());
    const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'liferaft');
    const yard = await signedInPerson({ role: 'yard' }, owner.organisation);
    const fact = { fact: 'inspected', on: '2026-01-02' };
    expect((await yard.post(`/v1/items/${item.id}/facts`, fact)).status).toBe(201);

    expect((await erase(yard)).status).toBe(204);

    expect((await yard.get('/v1/session')).status).toBe(401);
    const facts = await owner.get<{ items: { recordedBy: string }[] }>(`/v1/items/${item.id}/facts`);
    expect(facts.body.items.map(({ recordedBy }) => recordedBy)).toEqual([`person:${yard.person.id}`]);
    const { rows } = await pools.accounts.query('select name, email from "user" where id = $1', [yard.person.id]);
    expect(rows).toEqual([{ name: '', email: `${yard.person.id}@erased.invalid` }]);
    const kept = await inOrganisation(pools.app, wholeFleet(owner.organisation.id), async (tx) => [
      await tx.selectFrom('audit').selectAll().execute(),
      await tx.selectFrom('membership').selectAll().execute(),
    ]);
    expect(JSON.stringify(kept)).not.toContain(yard.person.email);
  });

  it('is meant: the address is asked for', async () => {
    const yard = await signedInPerson({ role: 'yard' });
    expect((await erase(yard, 'someone-else@example.org')).status).toBe(422);
    expect((await yard.get<Account>('/v1/account')).body.email).toBe(yard.person.email);
  });

  it('is not that of the last owner: nothing of it happens', async () => {
    const owner = await signedInPerson();
    await owner.post('/v1/organisations', { name: 'Avocet Boats', timeZone: 'UTC' });
    expect((await erase(owner)).status).toBe(409);
    expect((await owner.get<BelongingPage>('/v1/organisations')).body.items).toHaveLength(2);
  });
});

describe('a program’s key', () => {
  it('stands for no person', async () => {
    const key = await signedIn('owner');
    expect((await key.get<Session>('/v1/session')).body.person).toBeUndefined();
    for (const path of ['/v1/account', '/v1/organisations']) expect((await key.get(path)).status).toBe(403);
    expect((await key.post('/v1/organisation/leaving', {})).status).toBe(403);
  });
});
