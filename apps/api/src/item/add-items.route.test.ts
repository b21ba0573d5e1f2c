import type { AddedItems, ItemPage } from '@garboard/contract/item/item.ts';
import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { VesselTemplatePage } from '@garboard/contract/vessel/template.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function thingsOfATeal() {
  const owner = await signedIn();
  const { id } = await aVessel(owner.organisation.ctx(), ['solas']);
  const list = `/v1/vessels/${id}/items`;
  const aboard = async () => (await owner.get<ItemPage>(`${list}?limit=200`)).body.items;
  return { owner, list, batch: `${list}/batch`, aboard };
}

const RAFT = { kind: 'liferaft', label: 'Liferaft' };
const HOSE = { kind: 'gas_hose', label: 'Gas hose, cooker', zone: 'galley', quantity: 2 };

describe('POST /v1/vessels/{vesselId}/items/batch', () => {
  it('adds what it is given, in that order, and says where the list is', async () => {
    const { owner, list, batch, aboard } = await thingsOfATeal();

    const { status, headers, body } = await owner.post<AddedItems>(batch, { items: [RAFT, HOSE] });

    expect([status, headers.get('location')]).toEqual([201, list]);
    expect(body.items).toMatchObject([{ ...RAFT, quantity: 1, version: 1 }, HOSE]);
    expect(await aboard()).toEqual(body.items);
  });

  it('takes a template as it stands; every date is unknown until a fact says so', async () => {
    const { owner, batch } = await thingsOfATeal();
    const { body: templates } = await owner.get<VesselTemplatePage>('/v1/vessel-templates');
    const charter = templates.items.find(({ id }) => id === 'charter_yacht');

    const { body } = await owner.post<AddedItems>(batch, { items: charter?.items });

    expect(body.items.map(({ label }) => label)).toEqual(charter?.items.map(({ label }) => label));
    const raft = body.items.find(({ kind }) => kind === 'liferaft');
    const { body: obligations } = await owner.get<ObligationList>(`/v1/items/${raft?.id}/obligations`);
    expect(new Set(obligations.items.map(({ standing }) => standing))).toEqual(new Set(['unknown']));
  });

  it('points at every fault of every row, and adds nothing', async () => {
    const { owner, batch, aboard } = await thingsOfATeal();

    const { status, body } = await owner.post<Problem>(batch, {
      items: [RAFT, { kind: 'Gas Hose', label: ' ' }, HOSE, { kind: 'gas_hose', quantity: 0, colour: 'red' }],
    });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '/items/1/kind',
      '/items/1/label',
      '/items/3/colour',
      '/items/3/label',
      '/items/3/quantity',
    ]);
    expect(await aboard()).toEqual([]);
  });

  it('points at the kinds that the catalogue does not have', async () => {
    const { owner, batch, aboard } = await thingsOfATeal();

    const { status, body } = await owner.post<Problem>(batch, { items: [RAFT, { ...HOSE, kind: 'sea_anchor' }] });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['/items/1/kind']);
    expect(await aboard()).toEqual([]);
  });

  it.each([
    ['none', 0],
    ['more than a hundred', 101],
  ])('refuses %s', async (_, count) => {
    const { owner, batch, aboard } = await thingsOfATeal();

    const { status, body } = await owner.post<Problem>(batch, { items: Array.from({ length: count }, () => RAFT) });

    expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['/items']]);
    expect(await aboard()).toEqual([]);
  });

  it('takes a hundred', async () => {
    const { owner, batch, aboard } = await thingsOfATeal();

    const { status } = await owner.post(batch, { items: Array.from({ length: 100 }, () => HOSE) });

    expect(status).toBe(201);
    expect(await aboard()).toHaveLength(100);
  });

  it('adds them once, however often it is sent with the same key', async () => {
    const { owner, batch, aboard } = await thingsOfATeal();
    const key = { 'idempotency-key': 'teal-at-first' };

    const first = await owner.post(batch, { items: [RAFT, HOSE] }, key);
    const again = await owner.post(batch, { items: [RAFT, HOSE] }, key);

    expect([again.status, again.headers.get('idempotency-replayed')]).toEqual([201, 'true']);
    expect(again.text).toBe(first.text);
    expect(await aboard()).toHaveLength(2);
  });

  it('refuses whoever does not keep the register', async () => {
    const { owner, batch, aboard } = await thingsOfATeal();

    expect((await (await owner.as('yard')).post(batch, { items: [RAFT] })).status).toBe(403);
    expect(await aboard()).toEqual([]);
  });
});
