import type { Item, ItemPage } from '@garboard/contract/item/item.ts';
import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function itemsOfATeal() {
  const owner = await signedIn();
  const { id } = await aVessel(owner.organisation.ctx(), ['solas']);
  return { owner, path: `/v1/vessels/${id}/items` };
}

const RAFT = {
  kind: 'liferaft',
  label: 'Liferaft, 6 persons',
  attributes: { standard: 'solas', extendedInterval: false, seasonMonths: 6 },
};

describe('POST /v1/vessels/{vesselId}/items', () => {
  it('puts a thing on the list and says where it is', async () => {
    const { owner, path } = await itemsOfATeal();

    const made = await owner.post<Item>(path, RAFT);
    const read = await owner.get<Item>(made.headers.get('location') ?? '');

    expect(made.status).toBe(201);
    expect(made.headers.get('etag')).toBe('"1"');
    expect(made.body).toMatchObject({ ...RAFT, quantity: 1, withdrawn: false, version: 1 });
    expect(read.body).toEqual(made.body);
  });

  it('has its obligations from the start, unknown until facts come', async () => {
    const { owner, path } = await itemsOfATeal();
    const { body } = await owner.post<Item>(path, RAFT);

    const { body: obligations } = await owner.get<ObligationList>(`/v1/items/${body.id}/obligations`);

    const service = obligations.items.find(({ ruleId }) => ruleId === 'raft-solas');
    expect(service).toMatchObject({ standing: 'unknown', explanation: { binds: null } });
    expect(service?.explanation.missing.length).toBeGreaterThan(0);
  });

  it('names every fault', async () => {
    const { owner, path } = await itemsOfATeal();

    const { body } = await owner.post<Problem>(path, {
      kind: 'Life Raft',
      quantity: 0,
      maker: '',
      withdrawn: true,
      attributes: { 'season/Months': 6, note: ['x'], tag: 'a\u0001' },
    });

    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '/attributes/note',
      '/attributes/season~1Months',
      '/attributes/tag',
      '/kind',
      '/label',
      '/maker',
      '/quantity',
      '/withdrawn',
    ]);
  });

  it('names a kind that the catalogue does not have', async () => {
    const { owner, path } = await itemsOfATeal();

    const { status, body } = await owner.post<Problem>(path, { ...RAFT, kind: 'sea_anchor' });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['/kind']);
  });

  it('refuses whoever does not keep the register', async () => {
    const { owner, path } = await itemsOfATeal();
    const yard = await owner.as('yard');

    expect((await yard.post(path, RAFT)).status).toBe(403);
  });
});

describe('GET /v1/vessels/{vesselId}/items', () => {
  it('lists the things in the order in which they came, page after page', async () => {
    const { owner, path } = await itemsOfATeal();
    for (const label of ['Raft', 'Flares', 'Hose']) await owner.post(path, { kind: 'gas_hose', label });

    const { body } = await owner.get<ItemPage>(`${path}?limit=2`);
    const { body: rest } = await owner.get<ItemPage>(`${path}?limit=2&cursor=${body.nextCursor}`);

    expect([...body.items, ...rest.items].map(({ label }) => label)).toEqual(['Raft', 'Flares', 'Hose']);
    expect(rest.nextCursor).toBeNull();
  });
});
