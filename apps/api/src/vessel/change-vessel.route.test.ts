import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { Vessel } from '@garboard/contract/vessel/vessel.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function ownerOfATeal() {
  const owner = await signedIn();
  const { id } = await aVessel(owner.organisation.ctx());
  return { owner, id, path: `/v1/vessels/${id}` };
}

describe('PATCH /v1/vessels/{vesselId}', () => {
  it('changes what is given, keeps what is not, takes away what is null', async () => {
    const { owner, path } = await ownerOfATeal();
    await owner.patch(
      path,
      { rig: 'cutter', homePort: 'Poole', identifiers: { callSign: 'X' } },
      { 'if-match': '"1"' },
    );

    const { status, headers, body } = await owner.patch<Vessel>(
      path,
      { homePort: 'Cowes', rig: null },
      { 'if-match': '"2"' },
    );

    expect(status).toBe(200);
    expect(headers.get('etag')).toBe('"3"');
    expect(body).toMatchObject({ name: 'Teal', homePort: 'Cowes', identifiers: { callSign: 'X' }, version: 3 });
    expect(body).not.toHaveProperty('rig');
    expect((await owner.get(path)).body).toEqual(body);
  });

  it('knows a value, and forgets it', async () => {
    const { owner, path } = await ownerOfATeal();
    const value = { amount: '18500.00', currency: 'GBP' };

    const known = await owner.patch<Vessel>(path, { value }, { 'if-match': '"1"' });
    const forgotten = await owner.patch<Vessel>(path, { value: null, identifiers: null }, { 'if-match': '"2"' });

    expect(known.body.value).toEqual(value);
    expect(forgotten.body).not.toHaveProperty('value');
    expect(forgotten.body.identifiers).toEqual({});
  });

  it('brings the obligations of a new scheme at once', async () => {
    const { owner, id, path } = await ownerOfATeal();
    const { item } = await anItem(owner.organisation.ctx(), id, 'liferaft');

    await owner.patch(path, { schemes: ['solas'] }, { 'if-match': '"1"' });

    const { body } = await owner.get<ObligationList>(`/v1/items/${item.id}/obligations`);
    expect(body.items.map(({ scheme }) => scheme)).toContain('solas');
  });

  it('asks which version was read', async () => {
    const { owner, path } = await ownerOfATeal();

    expect((await owner.patch(path, { name: 'Widgeon' })).status).toBe(428);
    expect((await owner.get<Vessel>(path)).body.name).toBe('Teal');
  });

  it.each(['"2"', '"0"', '"abc"', '"01"'])(
    'changes nothing for If-Match: %s, and tells the current version',
    async (ifMatch) => {
      const { owner, path } = await ownerOfATeal();

      const { status, headers } = await owner.patch(path, { name: 'Widgeon' }, { 'if-match': ifMatch });

      expect(status).toBe(412);
      expect(headers.get('etag')).toBe('"1"');
      expect((await owner.get<Vessel>(path)).body).toMatchObject({ name: 'Teal', version: 1 });
    },
  );

  it.each(['*', 'W/"1"', '1', '"1", "2"'])(
    'refuses If-Match: %s, which does not say what was read',
    async (ifMatch) => {
      const { owner, path } = await ownerOfATeal();

      const { status, body } = await owner.patch<Problem>(path, { name: 'Widgeon' }, { 'if-match': ifMatch });

      expect(status).toBe(422);
      expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['#header/If-Match']);
    },
  );

  it('lets one of two people win who read the same version', async () => {
    const { owner, path } = await ownerOfATeal();

    const answers = await Promise.all(
      ['Widgeon', 'Gadwall'].map((name) => owner.patch(path, { name }, { 'if-match': '"1"' })),
    );

    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    expect((await owner.get<Vessel>(path)).body.version).toBe(2);
  });

  it('refuses what cannot be written, with every fault', async () => {
    const { owner, path } = await ownerOfATeal();

    const { body } = await owner.patch<Problem>(
      path,
      { id: 'x', createdAt: '2020-01-01', name: null, timeZone: null, beamM: 'wide' },
      { 'if-match': '"1"' },
    );

    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '/beamM',
      '/createdAt',
      '/id',
      '/name',
      '/timeZone',
    ]);
  });
});
