import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { SharedView, ShareLink, ShareLinkWithText } from '@garboard/contract/share/share-link.ts';
import { app, signedIn, tell } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { NOW } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { files } from '../../../../tests/src/support/files.ts';
import { createApp } from '../app.ts';

const inDays = (days: number) => new Date(NOW.getTime() + days * 86_400_000).toISOString();
const V1 = { 'if-match': '"1"' };

const look = <Body = SharedView>(token: string | undefined, at = app) =>
  tell<Body>(at.request, 'POST', '/v1/shared/look', { 'content-type': 'application/json' }, { token });

/** Two vessels with a raft each; one of them is worth something. */
async function aFleet() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const hers = await aVessel(ctx, ['solas'], 'Sanderling', {
    builtYear: 1998,
    identifiers: { callSign: 'MABC2' },
    value: { minor: 1_250_000, currency: 'EUR' },
  });
  const other = await aVessel(ctx, ['solas'], 'Whimbrel');
  for (const { id } of [hers, other]) {
    const { item } = await anItem(ctx, id, 'liferaft', 'Liferaft, 4 persons');
    await state(ctx, item.id, { fact: 'serviced', on: '2025-09-22', evidence: 'certificate' });
  }
  const share = async (more: object = {}) =>
    (await owner.post<ShareLinkWithText>('/v1/share-links', { label: 'insurer', expiresAt: inDays(30), ...more })).body;
  return { owner, hers, other, share };
}

describe('a link for one vessel', () => {
  it('shows her and what is due aboard, and nothing of any other', async () => {
    const { hers, share, owner } = await aFleet();
    const { token } = await share({ vesselIds: [hers.id] });

    const { status, body, text, headers } = await look(token);

    expect(status).toBe(200);
    expect(body).toMatchObject({
      organisation: owner.organisation.name,
      label: 'insurer',
      asOf: '2026-11-25',
      wholeFleet: false,
      vessels: [{ name: 'Sanderling', builtYear: 1998, schemes: ['solas'] }],
    });
    const raft = body.due.find(({ action }) => action.kind === 'service');
    expect(raft).toMatchObject({ vessel: 'Sanderling', thing: 'Liferaft, 4 persons', standing: 'overdue' });
    expect(text).not.toContain('Whimbrel');
    expect(headers.get('cache-control')).toBe('no-store');
  });

  it('tells neither ids nor identifiers, and what she is worth only when that was chosen', async () => {
    const { hers, share } = await aFleet();
    const plain = await look((await share({ vesselIds: [hers.id] })).token);
    const { organisation, ...shown } = plain.body;
    expect(organisation).toContain('Test Fleet');
    expect(JSON.stringify(shown)).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}-|MABC2|12500/);

    const { token } = await share({ vesselIds: [hers.id], showsValue: true });
    expect((await look(token)).body.vessels[0]?.value).toEqual({ amount: '12500.00', currency: 'EUR' });
  });
});

it('a link without vessels shows the whole fleet, with vessels that come later', async () => {
  const { owner, share } = await aFleet();
  const { token } = await share();
  await aVessel(owner.organisation.ctx(), [], 'Avocet');
  const { body } = await look(token);
  expect([body.wholeFleet, body.vessels.map(({ name }) => name)]).toEqual([true, ['Avocet', 'Sanderling', 'Whimbrel']]);
});

describe('each look', () => {
  it('is written down with its browser, and counted', async () => {
    const { owner, share } = await aFleet();
    const link = await share();
    const headers = { 'content-type': 'application/json', 'user-agent': 'a browser' };
    await tell(app.request, 'POST', '/v1/shared/look', headers, { token: link.token });
    await look(link.token);

    const path = `/v1/share-links/${link.id}`;
    expect((await owner.get<ShareLink>(path)).body).toMatchObject({ views: 2, lastViewedAt: NOW.toISOString() });
    const { items } = (await owner.get<{ items: object[] }>(`${path}/looks`)).body;
    expect(items).toMatchObject([{ at: NOW.toISOString() }, { at: NOW.toISOString(), userAgent: 'a browser' }]);
  });
});

describe('a link that is over', () => {
  it('looks like one that never was, whether revoked, run out or altered, and no look is written down', async () => {
    const { owner, share } = await aFleet();
    const [revoked, old] = [await share(), await share({ expiresAt: inDays(1) })];
    expect((await owner.post(`/v1/share-links/${revoked.id}/revocation`, {}, V1)).status).toBe(200);
    const later = createApp({ pools, files, now: () => new Date(inDays(1)), log: () => {}, version: 'test' });

    const answers = [
      await look<Problem>(revoked.token),
      await look<Problem>(old.token, later),
      await look<Problem>(`${old.token?.slice(0, -4)}AAAA`),
      await look<Problem>(await owner.organisation.key('owner')),
      await look<Problem>('no such thing'),
    ];
    for (const { status, body } of answers) expect([status, body.type]).toEqual([404, '/problems/not-found']);
    expect((await owner.get<ShareLink>(`/v1/share-links/${old.id}`)).body.views).toBe(0);
    const { items } = (await owner.get<AuditPage>(`/v1/audit?subjectId=${revoked.id}`)).body;
    expect(items.map(({ verb }) => verb)).toEqual(['revoke_share_link', 'make_share_link']);
  });

  it('can be revoked once, by the version that was read', async () => {
    const { owner, share } = await aFleet();
    const path = `/v1/share-links/${(await share()).id}/revocation`;
    expect((await owner.post(path, {})).status).toBe(428);
    expect((await owner.post(path, {}, { 'if-match': '"9"' })).status).toBe(412);
    expect((await owner.post(path, {}, V1)).status).toBe(200);
    expect((await owner.post(path, {}, { 'if-match': '"2"' })).status).toBe(409);
  });
});

it('the text of a link is told once, kept nowhere, and opens nothing but what it shows', async () => {
  const { owner } = await aFleet();
  const wanted = { label: 'insurer', expiresAt: inDays(30) };
  const once = { 'idempotency-key': 'one-link' };
  const first = await owner.post<ShareLinkWithText>('/v1/share-links', wanted, once);
  const again = await owner.post<ShareLinkWithText>('/v1/share-links', wanted, once);
  const { token, ...rest } = first.body;
  expect([again.status, again.body]).toEqual([201, rest]);
  const asKey = await tell(app.request, 'GET', '/v1/vessels', { authorization: `Bearer ${token}` });
  expect(asKey.status).toBe(401);
});

it.each([
  [{ expiresAt: NOW.toISOString() }, ['/expiresAt']],
  [{ expiresAt: inDays(400) }, ['/expiresAt']],
  [{ vesselIds: [] }, ['/vesselIds']],
  [{ vesselIds: ['0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a'] }, ['/vesselIds/0']],
  [{ label: ' ', token: 'mine' }, ['/label', '/token']],
])('a link with %j is refused', async (more, pointers) => {
  const owner = await signedIn();
  const wanted = { label: 'insurer', expiresAt: inDays(30), ...more };
  const { status, body } = await owner.post<Problem>('/v1/share-links', wanted);
  expect([status, body.errors?.map(({ pointer }) => pointer).sort()]).toEqual([422, pointers]);
});

it('no page of the house is for a search engine, and none tells another host where somebody came from', async () => {
  const { headers } = await app.request('/v1/session');
  expect([headers.get('x-robots-tag'), headers.get('referrer-policy')]).toEqual(['noindex, nofollow', 'no-referrer']);
});
