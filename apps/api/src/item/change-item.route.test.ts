import type { Item } from '@garboard/contract/item/item.ts';
import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function ownerOfARaft() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx);
  const { item } = await anItem(ctx, vessel.id, 'liferaft', 'Raft');
  return { owner, ctx, item, path: `/v1/items/${item.id}` };
}

describe('PATCH /v1/items/{itemId}', () => {
  it('changes what is given, keeps what is not, takes away what is null', async () => {
    const { owner, path } = await ownerOfARaft();
    await owner.patch(path, { maker: 'Acme', serialNumber: 'R-1' }, { 'if-match': '"1"' });

    const { status, headers, body } = await owner.patch<Item>(
      path,
      { maker: null, quantity: 2 },
      { 'if-match': '"2"' },
    );

    expect(status).toBe(200);
    expect(headers.get('etag')).toBe('"3"');
    expect(body).toMatchObject({ label: 'Raft', serialNumber: 'R-1', quantity: 2, version: 3 });
    expect(body).not.toHaveProperty('maker');
    expect((await owner.get(path)).body).toEqual(body);
  });

  it('moves the dates that rest on an attribute', async () => {
    const { owner, ctx, item } = await ownerOfARaft();
    const { item: rod } = await anItem(ctx, item.vesselId, 'standing_rigging_rod');
    await state(ctx, rod.id, { fact: 'installed', on: '2020-03-18' });

    await owner.patch(`/v1/items/${rod.id}`, { attributes: { makerLifeMonths: 108 } }, { 'if-match': '"2"' });

    const { body } = await owner.get<ObligationList>(`/v1/items/${rod.id}/obligations`);
    expect(body.items.map(({ dueOn }) => dueOn)).toContain('2029-03-18');
  });

  it('is another version after every fact, so that a change made before it is stale', async () => {
    const { owner, ctx, item, path } = await ownerOfARaft();
    await state(ctx, item.id, { fact: 'manufactured', on: '2020' });

    const { status, headers } = await owner.patch(path, { label: 'Old raft' }, { 'if-match': '"1"' });

    expect(status).toBe(412);
    expect(headers.get('etag')).toBe('"2"');
    expect((await owner.get<Item>(path)).body.label).toBe('Raft');
  });

  it('asks which version was read', async () => {
    const { owner, path } = await ownerOfARaft();

    expect((await owner.patch(path, { label: 'Old raft' })).status).toBe(428);
  });

  it('refuses what cannot be written, with every fault', async () => {
    const { owner, path } = await ownerOfARaft();

    const { body } = await owner.patch<Problem>(
      path,
      { kind: 'gas_hose', vesselId: 'x', withdrawn: true, label: null, quantity: 1.5 },
      { 'if-match': '"1"' },
    );

    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '/kind',
      '/label',
      '/quantity',
      '/vesselId',
      '/withdrawn',
    ]);
  });
});

describe('GET /v1/items/{itemId}', () => {
  it('has nothing more to say to a reader who has this version', async () => {
    const { owner, path } = await ownerOfARaft();
    const { headers } = await owner.get(path);

    expect((await owner.get(path, { 'if-none-match': headers.get('etag') ?? '' })).status).toBe(304);
  });
});
