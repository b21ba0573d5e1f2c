import type { FactPage } from '@garboard/contract/item/fact.ts';
import type { Item } from '@garboard/contract/item/item.ts';
import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { RecordedFact } from '@garboard/contract/item/recorded-fact.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function ownerOfARaft() {
  const owner = await signedIn();
  const vessel = await aVessel(owner.organisation.ctx(), ['solas']);
  const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'liferaft', 'Raft');
  return { owner, item, path: `/v1/items/${item.id}/facts` };
}

const STATION = { name: 'Invented Rafts', capacity: 'liferaft_service_station', certificate: 'C-77' };
const SERVICED = { fact: 'serviced', on: '2025-11-04', doneBy: STATION, evidence: 'certificate' };
const dueOn = (list: { items: readonly { ruleId: string; dueOn?: string | undefined }[] }) =>
  list.items.find(({ ruleId }) => ruleId === 'raft-solas')?.dueOn;

describe('POST /v1/items/{itemId}/facts', () => {
  it('answers with the new due date and its reasoning', async () => {
    const { owner, item, path } = await ownerOfARaft();

    const { status, headers, body } = await owner.post<RecordedFact>(path, SERVICED);

    expect(status).toBe(201);
    expect(headers.get('location')).toBe(path);
    expect(headers.get('etag')).toBe('"2"');
    expect(body).toMatchObject({
      asOf: '2026-11-25',
      fact: { ...SERVICED, itemId: item.id, struckOutBy: null },
      doubts: [],
    });
    const service = body.obligations.find(({ ruleId }) => ruleId === 'raft-solas');
    expect(service).toMatchObject({ dueOn: '2026-11-04', overdueAfter: '2026-11-04', standing: 'overdue' });
    expect(service?.explanation.binds).toMatchObject({ on: '2026-11-04', factIds: [body.fact.id] });
    expect(service?.explanation.sentence).toContain('4 November 2025');
    expect(service?.explanation.wouldChangeIt).toContainEqual(
      expect.objectContaining({ act: 'serviced', plus: 'P12M', ifDoneOn: '2026-11-25', movesTo: '2027-11-25' }),
    );
  });

  it('strikes out what never was, with nothing in its place, and keeps it readable', async () => {
    const { owner, item, path } = await ownerOfARaft();
    await owner.post<RecordedFact>(path, { ...SERVICED, on: '2024-11-04' });
    const { body: wrong } = await owner.post<RecordedFact>(path, SERVICED);

    const { status, body } = await owner.post<RecordedFact>(path, {
      fact: 'serviced',
      on: '2025-11-04',
      corrects: wrong.fact.id,
      retracts: true,
      note: 'It was the raft of another boat.',
    });

    expect(status).toBe(201);
    expect(dueOn({ items: body.obligations })).toBe('2025-11-04');
    const { body: facts } = await owner.get<FactPage>(`/v1/items/${item.id}/facts`);
    expect(facts.items.find(({ id }) => id === wrong.fact.id)?.struckOutBy).toBe(body.fact.id);
    expect(facts.items.find(({ id }) => id === body.fact.id)).toMatchObject({ retracts: true });
    const again = await owner.post<Problem>(path, { ...SERVICED, retracts: true });
    expect(again.body.errors?.map(({ pointer }) => pointer)).toEqual(['/retracts']);
  });

  it('leaves the stored obligations as it told them', async () => {
    const { owner, item, path } = await ownerOfARaft();
    const { body } = await owner.post<RecordedFact>(path, SERVICED);

    const { body: stored } = await owner.get<ObligationList>(`/v1/items/${item.id}/obligations`);

    expect(stored.items).toEqual(body.obligations);
  });

  it('strikes out a wrong fact, which stays visible, and every date that rested on it moves', async () => {
    const { owner, item, path } = await ownerOfARaft();
    const { body: wrong } = await owner.post<RecordedFact>(path, SERVICED);

    const { body: right } = await owner.post<RecordedFact>(path, {
      ...SERVICED,
      on: '2026-05-06',
      corrects: wrong.fact.id,
    });

    expect(dueOn({ items: right.obligations })).toBe('2027-05-06');
    expect(dueOn((await owner.get<ObligationList>(`/v1/items/${item.id}/obligations`)).body)).toBe('2027-05-06');
    const { body: facts } = await owner.get<FactPage>(path);
    expect(facts.items.map(({ id, corrects, struckOutBy }) => ({ id, corrects, struckOutBy }))).toEqual([
      { id: wrong.fact.id, corrects: null, struckOutBy: right.fact.id },
      { id: right.fact.id, corrects: wrong.fact.id, struckOutBy: null },
    ]);
  });

  it('does not need If-Match, but honours it', async () => {
    const { owner, item, path } = await ownerOfARaft();

    const stale = await owner.post(path, SERVICED, { 'if-match': '"7"' });
    const current = await owner.post(path, SERVICED, { 'if-match': '"1"' });

    expect([stale.status, stale.headers.get('etag'), current.status]).toEqual([412, '"1"', 201]);
    expect((await owner.get<Item>(`/v1/items/${item.id}`)).body.version).toBe(2);
    expect((await owner.get<FactPage>(path)).body.items).toHaveLength(1);
  });

  it.each([
    ['is not on the calendar', { on: '2026-02-30' }, '/on'],
    ['is absurd', { on: '0001' }, '/on'],
    ['lies in the future', { on: '2027-01-01' }, '/on'],
    ['is no date', { on: '18 March' }, '/on'],
    ['corrects a fact of nobody', { corrects: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d' }, '/corrects'],
  ])('names a statement that %s, and writes nothing', async (_, wrong, pointer) => {
    const { owner, path } = await ownerOfARaft();

    const { status, body } = await owner.post<Problem>(path, { ...SERVICED, ...wrong });

    expect(status).toBe(422);
    expect(body.errors?.map((fault) => fault.pointer)).toEqual([pointer]);
    expect((await owner.get<FactPage>(path)).body.items).toEqual([]);
  });

  it('names a service before manufacture', async () => {
    const { owner, path } = await ownerOfARaft();
    await owner.post(path, { fact: 'manufactured', on: '2020-06' });

    const { status, body } = await owner.post<Problem>(path, { ...SERVICED, on: '2019-05-01' });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['/on']);
  });

  it('accepts what looks odd and shows the doubt', async () => {
    const { owner, path } = await ownerOfARaft();
    await owner.post(path, SERVICED);

    const { status, body } = await owner.post<RecordedFact>(path, SERVICED);

    expect(status).toBe(201);
    expect(body.doubts).toEqual(['The same is on record already.']);
  });

  it('names every fault at once', async () => {
    const { owner, path } = await ownerOfARaft();

    const { body } = await owner.post<Problem>(
      path,
      {
        fact: 'blessed',
        on: '2026-02-30',
        outcome: 'fine',
        doneBy: { capacity: 'wizard', age: 900 },
        reading: { value: -1 },
        id: 'x',
      },
      { 'if-match': '*', 'idempotency-key': 'x'.repeat(256) },
    );

    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '#header/Idempotency-Key',
      '#header/If-Match',
      '/doneBy/age',
      '/doneBy/capacity',
      '/fact',
      '/id',
      '/on',
      '/outcome',
      '/reading/unit',
      '/reading/value',
    ]);
  });

  it('lets a yard record, and not a viewer', async () => {
    const { owner, path } = await ownerOfARaft();

    expect((await (await owner.as('yard')).post(path, SERVICED)).status).toBe(201);
    expect((await (await owner.as('viewer')).post(path, SERVICED)).status).toBe(403);
  });
});

describe('GET /v1/items/{itemId}/facts', () => {
  it('lists them in the order in which they were learned, page after page', async () => {
    const { owner, path } = await ownerOfARaft();
    for (const on of ['2024-05', '2023', '2025-05-02']) await owner.post(path, { ...SERVICED, on });

    const { body } = await owner.get<FactPage>(`${path}?limit=2`);
    const { body: rest } = await owner.get<FactPage>(`${path}?limit=2&cursor=${body.nextCursor}`);

    expect([...body.items, ...rest.items].map(({ on }) => on)).toEqual(['2024-05', '2023', '2025-05-02']);
  });
});
