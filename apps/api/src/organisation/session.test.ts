import type { Account } from '@garboard/contract/organisation/account.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { PERMISSIONS } from '@garboard/domain/organisation/permission.ts';
import { app, comeIn, log, signedIn, signedInPerson, tell } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, NOW } from '@garboard/tests/support/organisation.ts';
import { aPerson, linkOf } from '@garboard/tests/support/people.ts';
import { describe, expect, it } from 'vitest';

const SAME_ORIGIN = { 'sec-fetch-site': 'same-origin' };

async function aLink(expiresAt?: Date) {
  const organisation = await mintOrganisation(pools);
  const person = await aPerson(organisation);
  const path = await linkOf(organisation, person.id, expiresAt);
  return { organisation, person, path, token: path.replace('/sign-in/', '') };
}

async function aSession() {
  const { organisation, person, cookie } = await signedInPerson();
  const ask = <Body>(method: string, path: string, headers = {}, body?: unknown) =>
    tell<Body>(app.request, method, path, { cookie, 'content-type': 'application/json', ...headers }, body);
  return { organisation, person, cookie, ask };
}

describe('GET /sign-in/{token}', () => {
  it('opens a session, keeps it from scripts and other sites, and leads to the dashboard', async () => {
    const { path } = await aLink();

    const response = await app.request(path);

    expect([response.status, response.headers.get('location')]).toEqual([303, '/']);
    expect(response.headers.get('set-cookie')).toMatch(
      /^garboard_session=\w{32}[.]\S{40,60}; Max-Age=2592000; Path=\/; HttpOnly; SameSite=Lax$/,
    );
    expect(response.headers.get('cache-control')).toBe('no-store');
  });

  it('works once', async () => {
    const { path } = await aLink();
    await app.request(path);

    const again = await app.request(path);

    expect([again.status, again.headers.get('set-cookie')]).toEqual([410, null]);
    expect(await again.text()).toContain('This link does not open any more');
  });

  it('lets one of two readers in who open it at once', async () => {
    const { path } = await aLink();

    const answers = await Promise.all([app.request(path), app.request(path)]);

    expect(answers.map(({ status }) => status).sort()).toEqual([303, 410]);
  });

  it('is not used up by a program that only asks for its headers', async () => {
    const { path } = await aLink();

    await app.request(path, { method: 'HEAD' });

    expect((await app.request(path)).status).toBe(303);
  });

  it('says in words that a link is out of date, or is none', async () => {
    const { path } = await aLink(new Date(NOW.getTime() - 1));

    const [late, none] = [await app.request(path), await app.request('/sign-in/gbl_abc')];

    expect([late.status, none.status]).toEqual([410, 404]);
    expect(none.headers.get('content-type')).toContain('text/html');
  });

  it('is not written to the log', async () => {
    const { path, token } = await aLink();
    log.length = 0;

    await app.request(path);

    expect(log).toMatchObject([{ event: 'request', path: '/sign-in/:token', status: 303 }]);
    expect(JSON.stringify(log)).not.toContain(token);
  });
});

describe('a session', () => {
  it('says whose it is', async () => {
    const { ask, organisation, person } = await aSession();

    const { body } = await ask<Session>('GET', '/v1/session');

    expect(body).toEqual({
      person,
      organisation: { id: organisation.id, name: organisation.name },
      role: 'owner',
      permissions: PERMISSIONS,
    });
  });

  it('changes things from our own pages', async () => {
    const { ask } = await aSession();

    const byFetchMetadata = await ask('POST', '/v1/vessels', SAME_ORIGIN, { name: 'Sanderling' });
    const byOrigin = await ask(
      'POST',
      '/v1/vessels',
      { origin: 'http://localhost', host: 'localhost' },
      { name: 'Turnstone' },
    );

    expect([byFetchMetadata.status, byOrigin.status]).toEqual([201, 201]);
  });

  it.each([
    ['another site', { 'sec-fetch-site': 'cross-site', origin: 'http://localhost' }],
    ['a site beside ours', { 'sec-fetch-site': 'same-site' }],
    ['another origin', { origin: 'https://example.com', host: 'localhost' }],
    ['a page without an origin', { origin: 'null', host: 'localhost' }],
    ['nobody says where', {}],
  ])('changes nothing from %s', async (_, headers) => {
    const { ask } = await aSession();

    const { status, body } = await ask<Problem>('POST', '/v1/vessels', headers, { name: 'Sanderling' });

    expect([status, body.title]).toEqual([403, 'A browser sent this from another site']);
    expect((await ask<{ items: unknown[] }>('GET', '/v1/vessels')).body.items).toEqual([]);
  });

  it('is over after signing out, and the cookie is taken away', async () => {
    const { ask } = await aSession();

    const { status, headers } = await ask('POST', '/v1/session/end', SAME_ORIGIN);

    expect(status).toBe(204);
    expect(headers.get('set-cookie')).toMatch(/^garboard_session=; Max-Age=0; Path=\/$/);
    expect((await ask('GET', '/v1/session')).status).toBe(401);
  });

  it('does not stand in for a bad key', async () => {
    const { ask } = await aSession();

    const { status, headers } = await ask('GET', '/v1/session', { authorization: 'Bearer gbk_wrong' });

    expect(status).toBe(401);
    expect(headers.get('www-authenticate')).toBe('Bearer realm="garboard", error="invalid_token"');
  });

  it('is no key, and a key is no session', async () => {
    const { ask, cookie } = await aSession();
    const owner = await signedIn();

    const asKey = await ask('GET', '/v1/session', {
      authorization: `Bearer ${cookie.replace('garboard_session=', '')}`,
    });

    expect(asKey.status).toBe(401);
    expect((await owner.post('/v1/session/end', {})).status).toBe(403);
  });

  it('is worth nothing with another signature, without one, or once it has run out', async () => {
    const { cookie, ask } = await aSession();
    const [token] = cookie.replace('garboard_session=', '').split('.');
    const with_ = (value: string) => tell(app.request, 'GET', '/v1/session', { cookie: `garboard_session=${value}` });

    expect((await with_(`${token}.${'A'.repeat(43)}%3D`)).status).toBe(401);
    expect((await with_(String(token))).status).toBe(401);
    await pools.accounts.query(`update session set "expiresAt" = now() - interval '1 second' where token = $1`, [
      token,
    ]);
    expect((await ask('GET', '/v1/session')).status).toBe(401);
  });

  it('is not asked for by its organisation: a person has the role of the one they are at', async () => {
    const me = await signedInPerson({ role: 'viewer' });

    expect((await me.get<Session>('/v1/session')).body.role).toBe('viewer');
    expect((await me.post('/v1/vessels', { name: 'Teal' })).status).toBe(403);
  });
});

describe('one’s sessions elsewhere', () => {
  it('are listed, and ended one by one or all at once; their next request is refused', async () => {
    const here = await signedInPerson();
    const there = await comeIn(here.organisation, here.person);
    const everywhere = await comeIn(here.organisation, here.person);
    const { body } = await here.get<Account>('/v1/account');
    expect(body.sessions.map(({ current }) => current).filter(Boolean)).toHaveLength(1);
    expect(body.sessions).toHaveLength(3);

    const latest = (await everywhere.get<Account>('/v1/account')).body.sessions.find(({ current }) => current);
    expect((await here.post(`/v1/account/sessions/${latest?.id}/end`, {})).status).toBe(204);
    expect((await everywhere.get('/v1/session')).status).toBe(401);
    expect((await there.get('/v1/session')).status).toBe(200);

    expect((await here.post('/v1/account/other-sessions/end', {})).status).toBe(204);
    expect((await there.get('/v1/session')).status).toBe(401);
    expect((await here.get('/v1/session')).status).toBe(200);
  });

  it('are nobody else’s to end', async () => {
    const [me, other] = [await signedInPerson(), await signedInPerson()];
    const { body } = await other.get<Account>('/v1/account');

    const { status } = await me.post(`/v1/account/sessions/${body.sessions[0]?.id}/end`, {});

    expect(status).toBe(404);
    expect((await other.get('/v1/session')).status).toBe(200);
  });
});
