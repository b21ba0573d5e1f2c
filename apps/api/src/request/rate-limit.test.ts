import type { Problem } from '@garboard/contract/problem.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, NOW } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';
import { files } from '../../../../tests/src/support/files.ts';
import { createApp } from '../app.ts';

const deps = { files, pools, now: () => NOW, log: () => {}, version: 'test' };

async function limited(rateLimits = { credential: 3, address: 5 }) {
  const app = createApp({ ...deps, rateLimits });
  const organisation = await mintOrganisation(pools);
  const ask = (key: string, init: RequestInit = {}) =>
    app.request('/v1/session', { ...init, headers: { authorization: `Bearer ${key}`, ...init.headers } });
  return { app, ask, one: await organisation.key(), other: await organisation.key() };
}

describe('a limit', () => {
  it('is told on every answer, with what is left of it', async () => {
    const { ask, one } = await limited();

    const first = await ask(one);
    expect(first.status).toBe(200);
    expect(first.headers.get('ratelimit-policy')).toBe('"credential";q=3;w=60, "address";q=5;w=60');
    expect(first.headers.get('ratelimit')).toMatch(/^"credential";r=2;t=\d+, "address";r=4;t=\d+$/);
    expect((await ask(one)).headers.get('ratelimit')).toMatch(/^"credential";r=1;/);
  });

  it('that one credential has passed refuses it, says how long to wait, and leaves the others alone', async () => {
    const { ask, one, other } = await limited();
    for (let turn = 0; turn < 3; turn++) expect((await ask(one)).status).toBe(200);

    const refused = await ask(one);
    expect(refused.status).toBe(429);
    expect(((await refused.json()) as Problem).type).toBe('/problems/too-many-requests');
    const wait = Number(refused.headers.get('retry-after'));
    expect(wait).toBeGreaterThan(0);
    expect(wait).toBeLessThanOrEqual(60);
    expect(refused.headers.get('ratelimit')).toContain('"credential";r=0;');
    expect((await ask(other)).status).toBe(200);
  });

  it('of an address counts whoever asks there, good credential or none', async () => {
    const { app, ask, one } = await limited();
    for (const guess of ['a', 'b', 'c', 'd']) expect((await ask(`gbk_${guess}`)).status).toBe(401);
    expect((await app.request('/v1/session')).status).toBe(401);

    const refused = await ask(one);
    expect(refused.status).toBe(429);
    expect(refused.headers.get('ratelimit')).toContain('"address";r=0;');
  });

  it('is none for what is no question to the database', async () => {
    const { app } = await limited({ credential: 1, address: 1 });
    for (let turn = 0; turn < 4; turn++) expect((await app.request('/openapi.json')).status).toBe(200);
  });

  it('is not told where there is none', async () => {
    const response = await createApp(deps).request('/v1/session');
    expect(response.headers.has('ratelimit')).toBe(false);
  });
});

describe('pages of other hosts', () => {
  const origin = 'https://boats.example';
  const asked = { origin, 'access-control-request-method': 'PATCH', 'access-control-request-headers': 'if-match' };

  it('may call with a key where they are let in, and read what they need; never with the cookie', async () => {
    const app = createApp({ ...deps, corsOrigins: [origin] });
    const preflight = await app.request('/v1/vessels', { method: 'OPTIONS', headers: asked });
    expect(preflight.status).toBe(204);
    expect(preflight.headers.get('access-control-allow-origin')).toBe(origin);
    expect(preflight.headers.get('access-control-allow-headers')).toContain('If-Match');
    expect(preflight.headers.has('access-control-allow-credentials')).toBe(false);

    const response = await app.request('/v1/session', { headers: { origin } });
    expect(response.headers.get('access-control-allow-origin')).toBe(origin);
    expect(response.headers.get('access-control-expose-headers')).toContain('ETag');
  });

  it('are not let in from elsewhere, nor anywhere unless it is said', async () => {
    const elsewhere = { ...asked, origin: 'https://other.example' };
    const choosy = createApp({ ...deps, corsOrigins: [origin] });
    const refused = await choosy.request('/v1/vessels', { method: 'OPTIONS', headers: elsewhere });
    expect(refused.headers.has('access-control-allow-origin')).toBe(false);

    const closed = await createApp(deps).request('/v1/session', { headers: { origin } });
    expect(closed.headers.has('access-control-allow-origin')).toBe(false);
  });
});
