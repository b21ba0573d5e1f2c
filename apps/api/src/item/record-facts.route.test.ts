import type { FactPage } from '@garboard/contract/item/fact.ts';
import type { FactOutcome, FactOutcomes } from '@garboard/contract/item/facts-at-once.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const KEY = { 'idempotency-key': 'round-of-the-extinguishers' };
const SERVICED = {
  ...{ fact: 'serviced', on: '2026-11-20', evidence: 'stamped' },
  doneBy: { capacity: 'fire_equipment_technician' },
};
const NEVER = { ...SERVICED, on: '2027-01-01' };

async function extinguishers(count: number) {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx, ['bs5306']);
  const ids: string[] = [];
  for (let nth = 1; nth <= count; nth++)
    ids.push((await anItem(ctx, vessel.id, 'portable_extinguisher_dry_powder', `Extinguisher ${nth}`)).item.id);
  const factsOf = async (id: string) => (await owner.get<FactPage>(`/v1/items/${id}/facts`)).body.items;
  const send = (facts: readonly object[], headers = {}) =>
    owner.post<FactOutcomes>(
      '/v1/facts',
      { items: facts.map((fact, index) => ({ itemId: ids[index], fact })) },
      headers,
    );
  return { owner, ids, factsOf, send };
}

const results = (outcomes: FactOutcomes) => outcomes.items.map(({ result }) => result);
const recorded = (outcome: FactOutcome | undefined) => (outcome?.result === 'recorded' ? outcome : null);
const refusal = (outcome: FactOutcome | undefined) => (outcome?.result === 'refused' ? outcome.problem : null);

describe('POST /v1/facts', () => {
  it('records each and says what it moved, in the order asked', async () => {
    const { send, ids, factsOf } = await extinguishers(3);

    const { status, body } = await send([SERVICED, SERVICED, SERVICED]);

    expect([status, results(body)]).toEqual([200, ['recorded', 'recorded', 'recorded']]);
    expect(body.items.map(({ itemId }) => itemId)).toEqual(ids);
    const first = recorded(body.items[0]);
    expect(first?.dates).toContainEqual(
      expect.objectContaining({ ruleId: 'fe-bs-insp', dueOn: '2027-11-20', standing: 'in_date' }),
    );
    for (const id of ids) expect(await factsOf(id)).toMatchObject([SERVICED]);
  });

  it('one that is refused says why and does not take the others with it', async () => {
    const { send, ids, factsOf } = await extinguishers(3);

    const { body } = await send([SERVICED, NEVER, SERVICED]);

    expect(results(body)).toEqual(['recorded', 'refused', 'recorded']);
    expect(refusal(body.items[1])).toMatchObject({ type: '/problems/invalid', errors: [{ pointer: '/on' }] });
    expect(await factsOf(ids[1] ?? '')).toEqual([]);
  });

  it('another organisation’s item is not here, like one that never was', async () => {
    const [ours, theirs] = [await extinguishers(1), await extinguishers(1)];

    const items = [...theirs.ids, '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a'].map((itemId) => ({ itemId, fact: SERVICED }));
    const { body } = await ours.owner.post<FactOutcomes>('/v1/facts', { items });

    expect(body.items.map((each) => refusal(each)?.status)).toEqual([404, 404]);
    expect(refusal(body.items[0])).toEqual(refusal(body.items[1]));
    expect(await theirs.factsOf(theirs.ids[0] ?? '')).toEqual([]);
  });

  it('a body that does not fit is refused whole, and every fault is named with its row', async () => {
    const { send, ids, factsOf } = await extinguishers(2);

    const { status, body } = await send([SERVICED, { fact: 'polished', on: 'soon' }]);

    expect(status).toBe(422);
    const { errors } = body as unknown as Problem;
    expect(errors?.map(({ pointer }) => pointer).sort()).toEqual(['/items/1/fact/fact', '/items/1/fact/on']);
    expect(await factsOf(ids[0] ?? '')).toEqual([]);
  });

  it('takes one at least and two hundred at most', async () => {
    const { owner, ids } = await extinguishers(1);
    const row = { itemId: ids[0], fact: SERVICED };

    for (const items of [[], Array.from({ length: 201 }, () => row)]) {
      const { status, body } = await owner.post<Problem>('/v1/facts', { items });
      expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['/items']]);
    }
  });

  it('with the same key does nothing twice, and tells the same', async () => {
    const { send, ids, factsOf } = await extinguishers(2);

    const first = await send([SERVICED, SERVICED], KEY);
    const again = await send([SERVICED, SERVICED], KEY);

    expect(again.text).toBe(first.text);
    expect(again.headers.get('idempotency-replayed')).toBe('true');
    for (const id of ids) expect(await factsOf(id)).toHaveLength(1);
  });

  it('with the same key does what was left undone', async () => {
    const { send, ids, factsOf } = await extinguishers(2);
    const rowOfElsewhere = [{ ...SERVICED, corrects: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a' }, SERVICED];

    const first = await send(rowOfElsewhere, KEY);
    const again = await send(rowOfElsewhere, KEY);

    expect([results(first.body), results(again.body)]).toEqual([
      ['refused', 'recorded'],
      ['refused', 'recorded'],
    ]);
    expect(again.headers.get('idempotency-replayed')).toBeNull();
    expect(await factsOf(ids[1] ?? '')).toHaveLength(1);
  });

  it('a key that stood for other facts begins nothing', async () => {
    const { send, ids, factsOf } = await extinguishers(2);
    await send([NEVER], KEY);

    const { status, body } = await send([SERVICED, SERVICED], KEY);

    expect([status, (body as unknown as Problem).type]).toEqual([422, '/problems/idempotency-key-reused']);
    for (const id of ids) expect(await factsOf(id)).toEqual([]);
  });

  it('is for whoever may record facts', async () => {
    const { owner, ids } = await extinguishers(1);
    const viewer = await owner.as('viewer');

    const { status } = await viewer.post('/v1/facts', { items: [{ itemId: ids[0], fact: SERVICED }] });

    expect(status).toBe(403);
  });
});
