import type { Invitation, InvitationPage, InvitationPreview } from '@garboard/contract/organisation/invitation.ts';
import type { Organisation } from '@garboard/contract/organisation/organisation.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { app, type Client, type PersonClient, signedInPerson, tell } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { anAddress, letterTo } from '@garboard/tests/support/people.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const invite = (by: Client, email: string, more: object = {}, headers = {}) =>
  by.post<Invitation>('/v1/invitations', { email, role: 'surveyor', ...more }, headers);
const tokenFor = (email: string) => letterTo(email).path.replace('/invitation/', '');
const accept = (who: PersonClient, token: string) => who.post<Organisation>('/v1/invitations/acceptance', { token });
const look = (token: string) =>
  tell<InvitationPreview>(
    app.request,
    'POST',
    '/v1/invitations/preview',
    { 'content-type': 'application/json' },
    { token },
  );

async function invited(more: object = {}) {
  const owner = await signedInPerson();
  const guest = await signedInPerson();
  const { body } = await invite(owner, guest.person.email, more);
  return { owner, guest, invitation: body, token: tokenFor(guest.person.email) };
}

describe('an invitation', () => {
  it('goes out as a letter, shows what it offers, and lets its guest in', async () => {
    const { owner, guest, invitation, token } = await invited();
    expect(invitation).toMatchObject({ email: guest.person.email, role: 'surveyor', mailed: true, version: 1 });
    expect(letterTo(guest.person.email).subject).toBe(`${owner.organisation.name} invites you`);
    const preview = await look(token);
    expect([preview.status, preview.body]).toEqual([
      200,
      {
        organisation: owner.organisation.name,
        email: guest.person.email,
        role: 'surveyor',
        expiresAt: '2026-12-02T12:00:00.000Z',
      },
    ]);

    expect((await accept(guest, token)).body.id).toBe(owner.organisation.id);

    expect((await guest.get<Session>('/v1/session')).body).toMatchObject({
      organisation: { id: owner.organisation.id },
      role: 'surveyor',
    });
    expect((await owner.get<InvitationPage>('/v1/invitations')).body.items).toEqual([]);
  });

  it('carries the vessels it is for', async () => {
    const owner = await signedInPerson();
    const vessel = await aVessel(owner.organisation.ctx());
    await aVessel(owner.organisation.ctx(), [], 'Another');
    const guest = await signedInPerson();
    await invite(owner, guest.person.email, { vesselIds: [vessel.id] });
    await accept(guest, tokenFor(guest.person.email));
    const seen = await guest.get<{ items: { id: string }[] }>('/v1/vessels');
    expect(seen.body.items.map(({ id }) => id)).toEqual([vessel.id]);
  });

  it('works once', async () => {
    const { guest, token } = await invited();
    expect((await accept(guest, token)).status).toBe(200);
    expect((await accept(guest, token)).status).toBe(404);
    expect((await look(token)).status).toBe(404);
  });

  it('accepted again with the same key is answered as the first time', async () => {
    const { guest, token } = await invited();
    const once = { 'idempotency-key': 'the-same-click' };

    const first = await guest.post<Organisation>('/v1/invitations/acceptance', { token }, once);
    const again = await guest.post<Organisation>('/v1/invitations/acceptance', { token }, once);

    expect([first.status, again.status]).toEqual([200, 200]);
    expect(again.body).toEqual(first.body);
  });

  it('that is accepted twice at once lets its guest in once', async () => {
    const { owner, guest, token } = await invited();

    const answers = await Promise.all([accept(guest, token), accept(guest, token), accept(guest, token)]);

    expect(answers.map(({ status }) => status).sort()).toEqual([200, 404, 404]);
    const rows = await inOrganisation(pools.app, wholeFleet(owner.organisation.id), (tx) =>
      tx.selectFrom('membership').select('id').where('person_id', '=', guest.person.id).execute(),
    );
    expect(rows).toHaveLength(1);
  });

  it('is for its address alone, and tells others nothing', async () => {
    const { guest, token } = await invited();
    const other = await signedInPerson();
    const same = { 'x-request-id': 'same' };

    const stolen = await other.post('/v1/invitations/acceptance', { token }, same);
    const wrong = await other.post('/v1/invitations/acceptance', { token: `${token.slice(0, -4)}AAAA` }, same);

    expect([stolen.status, stolen.text]).toEqual([404, wrong.text]);
    expect((await accept(guest, token)).status).toBe(200);
  });

  it('opens nothing once it is withdrawn, or has run out', async () => {
    const one = await invited();
    const path = `/v1/invitations/${one.invitation.id}/withdrawal`;
    expect((await one.owner.post(path, {}, { 'if-match': '"9"' })).status).toBe(412);
    expect((await one.owner.post(path, {})).status).toBe(428);
    const withdrawn = await one.owner.post<Invitation>(path, {}, { 'if-match': '"1"' });
    expect([withdrawn.status, withdrawn.body.email, withdrawn.body.version]).toEqual([200, undefined, 2]);
    expect((await accept(one.guest, one.token)).status).toBe(404);
    expect((await one.owner.post(path, {}, { 'if-match': '"2"' })).status).toBe(409);

    const two = await invited();
    await pools.owner
      .updateTable('invitation')
      .set({ expires_at: '2026-11-25T12:00:00Z' })
      .where('id', '=', two.invitation.id)
      .execute();
    expect((await accept(two.guest, two.token)).status).toBe(404);
    expect((await look(two.token)).status).toBe(404);
  });

  it('is not sent twice, nor to somebody who is here already', async () => {
    const { owner, guest } = await invited();
    expect((await invite(owner, guest.person.email.toUpperCase())).status).toBe(409);
    expect((await invite(owner, owner.person.email)).status).toBe(409);
  });

  it('is sent once by a repeat of the request, and the link is not told again', async () => {
    const owner = await signedInPerson();
    const email = anAddress();
    const key = { 'idempotency-key': 'invite-1' };
    const first = await invite(owner, email, {}, key);
    const token = tokenFor(email);
    const again = await invite(owner, email, {}, key);
    expect([again.status, again.body.id, again.headers.get('idempotency-replayed')]).toEqual([
      201,
      first.body.id,
      'true',
    ]);
    expect(tokenFor(email)).toBe(token);
  });

  it('is refused where it is not sound', async () => {
    const owner = await signedInPerson();
    expect((await invite(owner, 'no address')).status).toBe(422);
    expect((await invite(owner, anAddress(), { role: 'captain' })).status).toBe(422);
    expect((await invite(owner, anAddress(), { role: 'manager', vesselIds: [owner.organisation.id] })).status).toBe(
      422,
    );
    expect((await owner.get<InvitationPage>('/v1/invitations')).body.items).toEqual([]);
  });

  it('to be an owner is an owner’s alone to send', async () => {
    const manager = await signedInPerson({ role: 'manager' });
    expect((await invite(manager, anAddress(), { role: 'owner' })).status).toBe(403);
    expect((await invite(manager, anAddress(), { role: 'manager' })).status).toBe(201);
  });

  it('is listed a page at a time', async () => {
    const owner = await signedInPerson();
    for (let n = 0; n < 3; n += 1) await invite(owner, anAddress());
    const first = (await owner.get<InvitationPage>('/v1/invitations?limit=2')).body;
    const rest = (await owner.get<InvitationPage>(`/v1/invitations?limit=2&cursor=${first.nextCursor}`)).body;
    expect([first.items.length, rest.items.length, rest.nextCursor]).toEqual([2, 1, null]);
  });
});
