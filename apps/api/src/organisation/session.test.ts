import { createSignInLink } from '@garboard/actions/organisation/administer.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { app, log, signedIn, tell } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, NOW } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';

const HOUR = 3_600_000;
const SAME_ORIGIN = { 'sec-fetch-site': 'same-origin' };

async function aLink(role: 'owner' | 'viewer' = 'owner', expiresAt = new Date(NOW.getTime() + HOUR)) {
  const organisation = await mintOrganisation(pools);
  const token = await createSignInLink(pools.owner, { organisationId: organisation.id, role, now: NOW, expiresAt });
  return { organisation, token, path: `/sign-in/${token}` };
}

async function aSession() {
  const link = await aLink();
  const response = await app.request(link.path);
  const cookie = response.headers.get('set-cookie')?.split(';')[0] ?? '';
  const ask = <Body>(method: string, path: string, headers = {}, body?: unknown) =>
    tell<Body>(app.request, method, path, { cookie, 'content-type': 'application/json', ...headers }, body);
  return { ...link, cookie, ask };
}

describe('GET /sign-in/{token}', () => {
  it('opens a session, keeps it from scripts and other sites, and leads to the dashboard', async () => {
    const { path } = await aLink();

    const response = await app.request(path);

    expect([response.status, response.headers.get('location')]).toEqual([303, '/']);
    expect(response.headers.get('set-cookie')).toMatch(
      /^garboard_session=gbs_[\w-]{86}; Max-Age=2592000; Path=\/; HttpOnly; SameSite=Lax$/,
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
    const { path } = await aLink('owner', new Date(NOW.getTime() - 1));

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
    const { ask, organisation } = await aSession();

    const { body } = await ask<Session>('GET', '/v1/session');

    expect(body).toEqual({ organisation: { id: organisation.id, name: organisation.name }, role: 'owner' });
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
});
