/** A repeat of a request has one effect and gets the same answer, to the byte. */
import { createApp } from '@garboard/api/app.ts';
import type { FactPage } from '@garboard/contract/item/fact.ts';
import type { RecordedFact } from '@garboard/contract/item/recorded-fact.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { Vessel, VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { describe, expect, it } from 'vitest';
import { signedIn, type Told } from '../support/api.ts';
import { pools } from '../support/database.ts';
import { files } from '../support/files.ts';
import { NOW } from '../support/organisation.ts';
import { anItem, aVessel } from '../support/vessels.ts';

const DAY = 86_400_000;
const KEY = { 'idempotency-key': 'leg-1' };
const SERVICED = {
  fact: 'serviced',
  on: '2025-11-04',
  doneBy: { certificate: 'C', capacity: 'liferaft_service_station', name: 'N' },
};

async function ownerOfARaft() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx, ['solas']);
  const { item } = await anItem(ctx, vessel.id, 'liferaft');
  return { owner, vessel, item };
}

/** What a program can see of an answer, but for what each request has of its own. */
const seen = ({ status, text, headers }: Told) => [status, text, headers.get('location'), headers.get('etag')];

describe('the same request with the same key', () => {
  const posts: readonly [string, (ids: { vesselId: string; itemId: string }) => string, object][] = [
    [
      'a vessel',
      () => '/v1/vessels',
      {
        name: 'Teal',
        identifiers: { officialNumber: '9', hin: 'H', mmsi: '2' },
        value: { currency: 'EUR', amount: '1' },
      },
    ],
    [
      'an item',
      ({ vesselId }) => `/v1/vessels/${vesselId}/items`,
      { label: 'L', kind: 'liferaft', attributes: { zebra: 1, a: 'x', mm: true, bbb: 0.1 } },
    ],
    [
      'a situation',
      ({ vesselId }) => `/v1/vessels/${vesselId}/situations`,
      { use: 'laid_up', place: 'ashore', from: '2026-11-02' },
    ],
    ['an event', ({ vesselId }) => `/v1/vessels/${vesselId}/events`, { note: 'n', on: '2026-11-02', event: 'gale' }],
    [
      'a figure of one’s own',
      ({ vesselId }) => `/v1/vessels/${vesselId}/overrides`,
      {
        ...{ ruleId: 'lpg-hose', duty: 'replacement', period: 'P4Y', weight: 'own', from: '2026-03-01' },
        ...{ decidedBy: 'D', document: 'B', reason: 'R' },
      },
    ],
    [
      'a rule of one’s own',
      () => '/v1/rules',
      {
        ...{ weight: 'own', resets: [{ by: [], act: 'inspected' }], kinds: ['gas_hose'], vessels: { which: 'all' } },
        limits: [{ plus: 'P1M', from: 'last_done', kind: 'interval' }],
        ...{ window: { after: 'P2D', before: 'P1D' }, first: { plus: 'P1Y', from: 'installed' } },
        ...{ inWords: 'W', action: { words: 'L', kind: 'inspect' }, takesEffectOn: '2026-03-01' },
        ...{ reason: 'R', document: 'B', decidedBy: 'D' },
      },
    ],
    ['a fact', ({ itemId }) => `/v1/items/${itemId}/facts`, SERVICED],
    [
      'a meter reading',
      ({ itemId }) => `/v1/items/${itemId}/facts`,
      { fact: 'meter', on: '2026-01', reading: { unit: 'hours', value: 12.5 } },
    ],
  ];

  it.each(posts)('gets the same answer to the byte, and says so: %s', async (_, pathOf, body) => {
    const { owner, vessel, item } = await ownerOfARaft();
    const path = pathOf({ vesselId: vessel.id, itemId: item.id });

    const first = await owner.post(path, body, KEY);
    const again = await owner.post(path, body, { 'idempotency-key': '"leg-1"' });

    expect(first.status).toBe(201);
    expect(seen(again)).toEqual(seen(first));
    expect([first, again].map(({ headers }) => headers.get('idempotency-replayed'))).toEqual([null, 'true']);
  });

  it('has one effect', async () => {
    const { owner, item } = await ownerOfARaft();
    const path = `/v1/items/${item.id}/facts`;

    for (let time = 0; time < 3; time++) await owner.post(path, SERVICED, KEY);

    expect((await owner.get<FactPage>(path)).body.items).toHaveLength(1);
  });

  it('has one effect when twelve arrive at once', async () => {
    const { owner, item } = await ownerOfARaft();
    const path = `/v1/items/${item.id}/facts`;

    const answers = await Promise.all(Array.from({ length: 12 }, () => owner.post(path, SERVICED, KEY)));

    expect((await owner.get<FactPage>(path)).body.items).toHaveLength(1);
    expect(new Set(answers.map((answer) => JSON.stringify(seen(answer)))).size).toBe(1);
    expect(answers.filter(({ headers }) => headers.get('idempotency-replayed') === null)).toHaveLength(1);
  });

  it('gets the same answer a month later, although the standing has changed since', async () => {
    const { owner, item } = await ownerOfARaft();
    const path = `/v1/items/${item.id}/facts`;
    const later = createApp({
      pools,
      files,
      now: () => new Date(NOW.getTime() + 30 * DAY),
      log: () => {},
      version: '1',
    });
    const dueSoon = { ...SERVICED, on: '2025-12-20' };
    const first = await owner.post<RecordedFact>(path, dueSoon, KEY);

    const again = await owner.at(later.request).post<RecordedFact>(path, dueSoon, KEY);
    const anew = await owner.at(later.request).post<RecordedFact>(path, dueSoon, { 'idempotency-key': 'leg-2' });

    const standing = ({ body }: Told<RecordedFact>) =>
      body.obligations.find(({ ruleId }) => ruleId === 'raft-solas')?.standing;
    expect([standing(first), standing(anew)]).toEqual(['due', 'overdue']);
    expect(again.text).toBe(first.text);
  });

  it('is not taken for stale when it was a change: the repeat gets the answer that was lost', async () => {
    const { owner, vessel } = await ownerOfARaft();
    const headers = { ...KEY, 'if-match': '"1"' };

    const first = await owner.patch<Vessel>(`/v1/vessels/${vessel.id}`, { rig: 'cutter' }, headers);
    const again = await owner.patch<Vessel>(`/v1/vessels/${vessel.id}`, { rig: 'cutter' }, headers);

    expect([first.status, first.body.version]).toEqual([200, 2]);
    expect(seen(again)).toEqual(seen(first));
    expect(again.headers.get('idempotency-replayed')).toBe('true');
  });

  it('means the same however its JSON is written', async () => {
    const owner = await signedIn();
    await owner.post('/v1/vessels', '{"name":"Teal","rig":"sloop"}', KEY);

    const { status, headers } = await owner.post('/v1/vessels', '{ "rig": "sloop",\n "name": "Teal" }', KEY);

    expect([status, headers.get('idempotency-replayed')]).toEqual([201, 'true']);
  });
});

describe('another request with the same key', () => {
  it('is refused and changes nothing: another body', async () => {
    const owner = await signedIn();
    await owner.post('/v1/vessels', { name: 'Teal' }, KEY);

    const { status, body } = await owner.post<Problem>('/v1/vessels', { name: 'Widgeon' }, KEY);

    expect([status, body.type]).toEqual([422, '/problems/idempotency-key-reused']);
    expect((await owner.get<VesselPage>('/v1/vessels')).body.items.map(({ name }) => name)).toEqual(['Teal']);
  });

  it('is refused and changes nothing: another address', async () => {
    const { owner, item } = await ownerOfARaft();
    const { item: other } = await anItem(owner.organisation.ctx(), item.vesselId, 'liferaft');
    await owner.post(`/v1/items/${item.id}/facts`, SERVICED, KEY);

    const { status, body } = await owner.post<Problem>(`/v1/items/${other.id}/facts`, SERVICED, KEY);

    expect([status, body.type]).toEqual([422, '/problems/idempotency-key-reused']);
    expect((await owner.get<FactPage>(`/v1/items/${other.id}/facts`)).body.items).toEqual([]);
  });

  it('is a request of its own when somebody else makes it', async () => {
    const owner = await signedIn();
    const manager = await owner.as('manager');

    const first = await owner.post<Vessel>('/v1/vessels', { name: 'Teal' }, KEY);
    const second = await manager.post<Vessel>('/v1/vessels', { name: 'Widgeon' }, KEY);

    expect([first.status, second.status]).toEqual([201, 201]);
    expect(second.body.id).not.toBe(first.body.id);
  });

  it('is taken up when the first one was refused', async () => {
    const { owner, item } = await ownerOfARaft();
    const path = `/v1/items/${item.id}/facts`;
    await owner.post(path, { ...SERVICED, on: '2027-01-01' }, KEY);

    expect((await owner.post(path, SERVICED, KEY)).status).toBe(201);
  });

  it.each(['x'.repeat(256), '"unclosed', '""', 'two words', '"a\\q"'])(
    'cannot be told by a key that is none: %s',
    async (key) => {
      const owner = await signedIn();

      const { status, body } = await owner.post<Problem>('/v1/vessels', { name: 'Teal' }, { 'idempotency-key': key });

      expect(status).toBe(422);
      expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['#header/Idempotency-Key']);
    },
  );

  it('has a key of up to 255 characters', async () => {
    const owner = await signedIn();

    expect((await owner.post('/v1/vessels', { name: 'Teal' }, { 'idempotency-key': 'x'.repeat(255) })).status).toBe(
      201,
    );
  });
});
