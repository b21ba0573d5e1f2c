import type { ApiKey, ApiKeyPage, ApiKeyWithText } from '@garboard/contract/api-key/api-key.ts';
import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { app, signedIn, tell } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { NOW } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { files } from '../../../../tests/src/support/files.ts';
import { createApp } from '../app.ts';

const inDays = (days: number) => new Date(NOW.getTime() + days * 86_400_000).toISOString();
const WANTED = { name: 'tide board', role: 'surveyor', expiresAt: inDays(90) };
const V1 = { 'if-match': '"1"' };

const by = (key: string | undefined, at = app) => ({
  get: <Body>(path: string) => tell<Body>(at.request, 'GET', path, { authorization: `Bearer ${key}` }),
  post: <Body>(path: string, body: unknown) =>
    tell<Body>(at.request, 'POST', path, { authorization: `Bearer ${key}`, 'content-type': 'application/json' }, body),
});
/** The same program some hours later. */
const later = (hours: number) =>
  createApp({ pools, files, now: () => new Date(NOW.getTime() + hours * 3_600_000), log: () => {}, version: 'test' });

async function made(more: object = {}) {
  const owner = await signedIn();
  const { status, body, headers } = await owner.post<ApiKeyWithText>('/v1/api-keys', { ...WANTED, ...more });
  expect(status).toBe(201);
  return { owner, body, headers, path: `/v1/api-keys/${body.id}` };
}

const SURVEYOR_MAY = ['read', 'record_facts', 'answer_findings', 'verify_findings', 'survey', 'take_originals'];

describe('making a key', () => {
  it('tells its text once, which then opens what its role may', async () => {
    const { owner, body, headers, path } = await made();
    expect(body).toMatchObject({ name: 'tide board', role: 'surveyor', version: 1, endsWith: body.key?.slice(-4) });
    expect([headers.get('location'), headers.get('etag')]).toEqual([path, '"1"']);
    const session = await by(body.key).get<Session>('/v1/session');
    expect(session.body).toMatchObject({ role: 'surveyor', permissions: SURVEYOR_MAY });

    for (const read of [await owner.get<ApiKey>(path), await owner.get<ApiKeyPage>('/v1/api-keys')]) {
      expect(read.status).toBe(200);
      expect(read.text).not.toContain(body.key?.slice(4));
    }
  });

  it('tells a repeat everything but the text, and keeps no text anywhere in the database', async () => {
    const owner = await signedIn();
    const once = { 'idempotency-key': 'made-once' };
    const first = await owner.post<ApiKeyWithText>('/v1/api-keys', WANTED, once);
    const again = await owner.post<ApiKeyWithText>('/v1/api-keys', WANTED, once);

    const { key, ...rest } = first.body;
    expect([again.status, again.body]).toEqual([201, rest]);
    const { rows } = await sql<{ text: string }>`
      select (select coalesce(string_agg(t::text, ''), '') from idempotency t) ||
             (select coalesce(string_agg(t::text, ''), '') from api_key t) ||
             (select coalesce(string_agg(t::text, ''), '') from audit t) as text`.execute(pools.owner);
    expect(rows[0]?.text).toContain(rest.id);
    expect(rows[0]?.text).not.toContain(key?.slice(-43));
  });

  it.each([
    [{ role: 'captain' }, ['/role']],
    [{ role: 'viewer', permissions: ['read', 'record_facts'] }, ['/permissions']],
    [{ permissions: ['record_facts'] }, ['/permissions']],
    [{ role: 'manager', vesselIds: ['0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a'] }, ['/vesselIds', '/vesselIds/0']],
    [{ expiresAt: NOW.toISOString() }, ['/expiresAt']],
    [{ expiresAt: inDays(367) }, ['/expiresAt']],
    [{ name: '', secret: 'mine' }, ['/name', '/secret']],
  ])('refuses %j and makes nothing', async (more, pointers) => {
    const owner = await signedIn();
    const { status, body } = await owner.post<Problem>('/v1/api-keys', { ...WANTED, ...more });
    expect([status, body.errors?.map(({ pointer }) => pointer).sort()]).toEqual([422, pointers]);
    expect((await owner.get<ApiKeyPage>('/v1/api-keys')).body.items.some(({ name }) => name === 'tide board')).toBe(
      false,
    );
  });

  it('never gives more than the maker has, whether a manager or a narrowed key', async () => {
    const owner = await signedIn();
    const manager = by(await owner.organisation.key('manager'));
    expect((await manager.post('/v1/api-keys', { ...WANTED, role: 'owner' })).status).toBe(403);
    expect((await manager.post('/v1/api-keys', { ...WANTED, role: 'manager' })).status).toBe(201);

    const narrow = { role: 'manager', permissions: ['read', 'keep_keys'] };
    const { body } = await owner.post<ApiKeyWithText>('/v1/api-keys', { ...WANTED, ...narrow });
    expect((await by(body.key).post('/v1/api-keys', WANTED)).status).toBe(403);
    expect((await by(body.key).post('/v1/api-keys', { ...WANTED, role: 'viewer' })).status).toBe(201);
  });
});

describe('a narrowed key', () => {
  it('may only what it was made for, of what its role may', async () => {
    const { owner, body } = await made({ permissions: ['read'] });
    const vessel = await aVessel(owner.organisation.ctx(), ['solas']);
    const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'liferaft');
    const fact = { fact: 'inspected', on: '2026-11-01' };

    expect((await by(body.key).get(`/v1/items/${item.id}`)).status).toBe(200);
    expect((await by(body.key).post(`/v1/items/${item.id}/facts`, fact)).status).toBe(403);
  });

  it('sees its own vessels alone', async () => {
    const owner = await signedIn();
    const [hers, other] = [
      await aVessel(owner.organisation.ctx(), ['solas']),
      await aVessel(owner.organisation.ctx(), ['solas']),
    ];
    const { body } = await owner.post<ApiKeyWithText>('/v1/api-keys', { ...WANTED, vesselIds: [hers.id] });
    expect(body.vesselIds).toEqual([hers.id]);
    const { items } = (await by(body.key).get<{ items: { id: string }[] }>('/v1/vessels')).body;
    expect(items.map(({ id }) => id)).toEqual([hers.id]);
    expect((await by(body.key).get(`/v1/vessels/${other.id}`)).status).toBe(404);
  });
});

describe('when a key was last used', () => {
  it('is known to the minute, and makes no version of it', async () => {
    const { owner, body, path } = await made();
    expect((await owner.get<ApiKey>(path)).body.lastUsedAt).toBeUndefined();
    await by(body.key).get('/v1/vessels');
    await by(body.key, later(0.01)).get('/v1/vessels');
    expect((await owner.get<ApiKey>(path)).body).toMatchObject({ lastUsedAt: NOW.toISOString(), version: 1 });
    await by(body.key, later(1)).get('/v1/vessels');
    expect((await owner.get<ApiKey>(path)).body.lastUsedAt).toBe(new Date(NOW.getTime() + 3_600_000).toISOString());
  });
});

describe('renewing a key', () => {
  it('lets the text before work beside the new one until the overlap ends', async () => {
    const { owner, body, path } = await made();
    const renewed = await owner.post<ApiKeyWithText>(
      `${path}/renewal`,
      { overlapHours: 2, expiresAt: inDays(180) },
      V1,
    );
    expect(renewed.body).toMatchObject({ id: body.id, version: 2, previousUntil: inHours(2) });
    expect(renewed.body.key).not.toBe(body.key);

    const statusOf = async (key: string | undefined, hours: number) =>
      (await by(key, later(hours)).get('/v1/vessels')).status;
    expect([await statusOf(body.key, 1), await statusOf(renewed.body.key, 1)]).toEqual([200, 200]);
    expect([await statusOf(body.key, 2), await statusOf(renewed.body.key, 2)]).toEqual([401, 200]);
  });

  it('without an overlap ends the text before at once; a second renewal leaves two texts at most', async () => {
    const { owner, body, path } = await made();
    const renew = async (overlapHours: number, version: number) =>
      (
        await owner.post<ApiKeyWithText>(
          `${path}/renewal`,
          { overlapHours, expiresAt: inDays(180) },
          { 'if-match': `"${version}"` },
        )
      ).body.key;
    const second = await renew(24, 1);
    const third = await renew(24, 2);
    const statuses = async () =>
      Promise.all([body.key, second, third].map(async (key) => (await by(key).get('/v1/vessels')).status));
    expect(await statuses()).toEqual([401, 200, 200]);
    await renew(0, 3);
    expect(await statuses()).toEqual([401, 401, 401]);
  });

  it('does not let the text before outlive what it was made for', async () => {
    const { owner, path } = await made({ expiresAt: inHours(1) });
    const { body } = await owner.post<ApiKey>(`${path}/renewal`, { overlapHours: 5, expiresAt: inDays(9) }, V1);
    expect(body.previousUntil).toBe(inHours(1));
  });

  it('needs the version that was read, a sound end, and a key that is not revoked', async () => {
    const { owner, path } = await made();
    const renewal = { expiresAt: inDays(9) };
    expect((await owner.post(`${path}/renewal`, renewal)).status).toBe(428);
    expect((await owner.post(`${path}/renewal`, renewal, { 'if-match': '"7"' })).status).toBe(412);
    expect((await owner.post(`${path}/renewal`, { expiresAt: inDays(999) }, V1)).status).toBe(422);
    await owner.post(`${path}/revocation`, {}, V1);
    expect((await owner.post(`${path}/renewal`, renewal, { 'if-match': '"2"' })).status).toBe(409);
  });
});

describe('revoking a key', () => {
  it('ends both its texts at once, and leaves it on the list with why in the audit', async () => {
    const { owner, body, path } = await made();
    const renewed = await owner.post<ApiKeyWithText>(`${path}/renewal`, { expiresAt: inDays(180) }, V1);
    const reason = 'It stood in a script that was published.';
    const { status } = await owner.post(`${path}/revocation`, { reason }, { 'if-match': '"2"' });
    expect(status).toBe(200);

    const unknown = await by(`${body.key?.slice(0, -4)}AAAA`).get('/v1/vessels');
    for (const key of [body.key, renewed.body.key]) {
      const refused = await by(key).get<Problem>('/v1/vessels');
      expect([refused.status, refused.body.type]).toEqual([401, (unknown.body as Problem).type]);
    }
    expect((await owner.get<ApiKey>(path)).body.revokedAt).toBe(NOW.toISOString());
    const { items } = (await owner.get<AuditPage>(`/v1/audit?subject=api_key&subjectId=${body.id}`)).body;
    expect(items.map(({ verb }) => verb)).toEqual(['revoke_api_key', 'renew_api_key', 'make_api_key']);
    expect(items[0]?.after).toMatchObject({ reason });
  });

  it('needs somebody who could have made it', async () => {
    const owner = await signedIn();
    const { body } = await owner.post<ApiKeyWithText>('/v1/api-keys', { ...WANTED, role: 'owner' });
    const manager = await owner.organisation.key('manager');
    const headers = { authorization: `Bearer ${manager}`, 'content-type': 'application/json', ...V1 };
    const path = `/v1/api-keys/${body.id}/revocation`;
    expect((await tell(app.request, 'POST', path, headers, {})).status).toBe(403);
    expect((await by(body.key).get('/v1/vessels')).status).toBe(200);
  });
});

const inHours = (hours: number) => new Date(NOW.getTime() + hours * 3_600_000).toISOString();
