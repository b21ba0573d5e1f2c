import type { DueList } from '@garboard/contract/due-list/due-list.ts';
import type { Fleet } from '@garboard/contract/fleet/fleet.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { ofRules } from '@garboard/tests/support/due-rows.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const FLARES = ['2026-10-31', '2026-12-05', '2027-06-30', '2028-01-31'];

/** Four flares with printed dates under one law, and one of which nothing is known. */
async function aFleetWithFlares() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx, ['us_recreational'], 'Shearwater');
  for (const on of FLARES) {
    const { item } = await anItem(ctx, vessel.id, 'hand_flare', `Flare ${on}`);
    await state(ctx, item.id, { fact: 'printed_expiry', on });
  }
  const unknown = await anItem(ctx, vessel.id, 'hand_flare', 'Flare without a stamp');
  return { owner, ctx, vessel, unknown: unknown.item };
}

const LAW = 'scheme=us_recreational';
const days = ({ items }: DueList) => items.map(({ overdueAfter }) => overdueAfter);

describe('GET /v1/due', () => {
  it('lists everything that has a date, by the last day on which nothing is wrong yet', async () => {
    const { owner, vessel } = await aFleetWithFlares();

    const { body } = await owner.get<DueList>(`/v1/due?${LAW}`);

    expect(body.asOf).toBe('2026-11-25');
    expect(days(body)).toEqual(FLARES);
    expect(body.items.map(({ standing }) => standing)).toEqual(['overdue', 'due', 'in_date', 'in_date']);
    expect(body.items[0]).toMatchObject({
      vessel: { id: vessel.id, name: 'Shearwater' },
      item: { label: 'Flare 2026-10-31' },
      weight: 'law',
      days: -25,
      reference: { status: expect.any(String) },
    });
  });

  it('counts in every answer what is unknown too, whichever standing is asked for', async () => {
    const { owner } = await aFleetWithFlares();

    const { body: all } = await owner.get<DueList>('/v1/due');
    const { body: few } = await owner.get<DueList>('/v1/due?standing=overdue&limit=1');

    expect(few.counts).toEqual(all.counts);
    expect(few.counts.overdue.law).toBe(1);
    expect(few.counts.unknown.law).toBe(1);
    expect(few.vesselsOverdue).toBe(1);
  });

  it('gives what has no date as a group of its own', async () => {
    const { owner, unknown } = await aFleetWithFlares();

    const { body } = await owner.get<DueList>(`/v1/due?${LAW}&standing=unknown&horizonDays=1`);

    expect(ofRules(body).map(({ item, standing }) => [item.id, standing])).toEqual([[unknown.id, 'unknown']]);
    expect(body.items[0]).not.toHaveProperty('overdueAfter');
  });

  it('gives each line once, page after page', async () => {
    const { owner } = await aFleetWithFlares();
    const { body: first } = await owner.get<DueList>(`/v1/due?${LAW}&limit=3`);

    const { body: second } = await owner.get<DueList>(`/v1/due?${LAW}&limit=3&cursor=${first.nextCursor}`);

    expect([...days(first), ...days(second)]).toEqual(FLARES);
    expect(second.nextCursor).toBeNull();
  });

  it('refuses the cursor of a list with other filters', async () => {
    const { owner } = await aFleetWithFlares();
    const { body } = await owner.get<DueList>(`/v1/due?${LAW}&limit=1`);

    const { status, body: refused } = await owner.get<Problem>(
      `/v1/due?${LAW}&weight=law&limit=1&cursor=${body.nextCursor}`,
    );

    expect(status).toBe(422);
    expect(refused.errors?.map(({ pointer }) => pointer)).toEqual(['#query/cursor']);
  });

  it.each([
    ['standing=due', ['2026-12-05']],
    ['horizonDays=30', ['2026-10-31', '2026-12-05']],
    ['horizonDays=0', ['2026-10-31']],
    ['source=obligation&standing=overdue', ['2026-10-31']],
    ['kind=liferaft', []],
    ['weight=insurer', []],
    ['vesselId=0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', []],
  ])('filters by %s', async (query, expected) => {
    const { owner } = await aFleetWithFlares();

    const { body } = await owner.get<DueList>(`/v1/due?${LAW}&${query}`);

    expect(days(body)).toEqual(expected);
  });

  it('compares the day asked with the stored dates: in date on the day itself, overdue the day after', async () => {
    const { owner } = await aFleetWithFlares();
    const standingOn = async (day: string) =>
      (await owner.get<DueList>(`/v1/due?${LAW}&asOf=${day}`)).body.items[2]?.standing;

    expect([
      await standingOn('2027-05-30'),
      await standingOn('2027-05-31'),
      await standingOn('2027-06-30'),
      await standingOn('2027-07-01'),
    ]).toEqual(['in_date', 'due', 'due', 'overdue']);
  });

  it('works a day gone by out from what was on record and true then', async () => {
    const { owner, ctx, unknown } = await aFleetWithFlares();
    await state(ctx, unknown.id, { fact: 'printed_expiry', on: '2029-08-31' });

    const now = await owner.get<DueList>(`/v1/due?${LAW}`);
    const before = await owner.get<DueList>(`/v1/due?${LAW}&knownAt=2026-11-25T11:59:59Z`);

    expect(days(now.body)).toEqual([...FLARES, '2029-08-31']);
    expect(before.body.items).toEqual([]);
  });

  it.each(['', '&standing=unknown', '&standing=due', '&horizonDays=30', '&limit=2'])(
    'says the same from what is stored and worked out anew%s',
    async (query) => {
      const { owner } = await aFleetWithFlares();

      const { body: stored } = await owner.get<DueList>(`/v1/due?${LAW}${query}`);
      const { body: anew } = await owner.get<DueList>(`/v1/due?${LAW}${query}&knownAt=2999-01-01T00:00:00Z`);

      expect(stored.items.length).toBeGreaterThan(0);
      expect({ ...anew, nextCursor: null }).toEqual({ ...stored, nextCursor: null });
      expect(anew.nextCursor === null).toBe(stored.nextCursor === null);
    },
  );

  it('counts what the filters mean, however it stands', async () => {
    const { owner, ctx } = await aFleetWithFlares();
    const { id: other } = await aVessel(ctx, ['us_recreational'], 'Fulmar');
    const { item } = await anItem(ctx, other, 'hand_flare', 'Old flare');
    await state(ctx, item.id, { fact: 'printed_expiry', on: '2026-01-31' });
    const counted = async (query: string) => {
      const { body: stored } = await owner.get<DueList>(`/v1/due?${query}`);
      const { body: anew } = await owner.get<DueList>(`/v1/due?${query}&knownAt=2999-01-01T00:00:00Z`);
      expect([anew.counts, anew.vesselsOverdue]).toEqual([stored.counts, stored.vesselsOverdue]);
      const { overdue, due, in_date, unknown } = stored.counts;
      return [overdue.law, due.law, in_date.law, unknown.law, stored.vesselsOverdue];
    };

    expect(await counted('limit=5')).toEqual([2, 1, 2, 1, 2]);
    expect(await counted(`vesselId=${other}`)).toEqual([1, 0, 0, 0, 1]);
    expect(await counted('scheme=us_recreational')).toEqual([2, 1, 2, 1, 2]);
    expect(await counted('weight=law&standing=due')).toEqual([2, 1, 2, 1, 2]);
    expect(await counted('kind=liferaft')).toEqual([0, 0, 0, 0, 0]);
    expect(await counted('weight=insurer')).toEqual([0, 0, 0, 0, 0]);
  });

  it('lists and counts apart what is suspended while she is laid up, and lets it come back when she does', async () => {
    const owner = await signedIn();
    const ctx = owner.organisation.ctx();
    const { id } = await aVessel(ctx, ['us_sailing_school'], 'Whimbrel');
    const { item } = await anItem(ctx, id, 'portable_extinguisher_foam', 'Extinguisher, galley');
    await state(ctx, item.id, {
      fact: 'serviced',
      on: '2025-06-01',
      doneBy: { capacity: 'fire_equipment_technician' },
    });
    await owner.post(`/v1/vessels/${id}/situations`, {
      from: '2026-11-02',
      place: 'ashore',
      use: 'laid_up',
      dismantled: true,
    });
    await owner.post(`/v1/vessels/${id}/situations`, { from: '2027-04-10', place: 'afloat', use: 'in_commission' });
    const law = 'weight=law';
    const ask = async (query: string) => {
      const { body: stored } = await owner.get<DueList>(`/v1/due?${query}`);
      const { body: anew } = await owner.get<DueList>(`/v1/due?${query}&knownAt=2999-01-01T00:00:00Z`);
      expect(anew).toEqual(stored);
      const rows = ofRules(stored).map(({ ruleId, standing, suspendedFrom }) => [ruleId, standing, suspendedFrom]);
      return { rows, counts: [stored.counts.overdue.law, stored.counts.suspended.law, stored.vesselsOverdue] };
    };

    expect(await ask(law)).toEqual({ rows: [], counts: [0, 1, 0] });
    expect(await ask(`${law}&suspended=true`)).toEqual({
      rows: [['fe-us-school', 'due', '2026-11-02']],
      counts: [0, 1, 0],
    });
    const back = await ask(`${law}&asOf=2027-04-10`);
    expect(back).toEqual({ rows: [['fe-us-school', 'overdue', undefined]], counts: [1, 0, 1] });
    const { body: fleet } = await owner.get<Fleet>('/v1/fleet');
    expect(fleet.items[0]).toMatchObject({ counts: { overdue: { law: 0 }, suspended: { law: 1 } } });
    expect(fleet.items[0]).not.toHaveProperty('oldestOverdueAfter');
  });

  it('calls a weekly duty due for its last two days only', async () => {
    const owner = await signedIn();
    const ctx = owner.organisation.ctx();
    const { id } = await aVessel(ctx, ['us_small_passenger'], 'Dunlin');
    const { item } = await anItem(ctx, id, 'rescue_boat', 'Rescue boat');
    await state(ctx, item.id, { fact: 'inspected', on: '2026-11-25' });
    const standing = async (day: string) => {
      const { body } = await owner.get<DueList>(`/v1/due?vesselId=${id}&asOf=${day}`);
      return ofRules(body).find(({ ruleId }) => ruleId === 'us-lsa-wk')?.standing;
    };

    expect([await standing('2026-11-29'), await standing('2026-11-30')]).toEqual(['in_date', 'due']);
  });

  it.each([
    ['standing=late', '#query/standing'],
    ['suspended=yes', '#query/suspended'],
    ['suspended=true&standing=due', '#query/suspended'],
    ['kind=nope', '#query/kind'],
    ['horizonDays=-1', '#query/horizonDays'],
    ['horizonDays=', '#query/horizonDays'],
    ['vesselId=Shearwater', '#query/vesselId'],
    ['scheme=navy', '#query/scheme'],
    ['kind=Hand%20flare', '#query/kind'],
    ['standng=overdue', '#query/standng'],
    ['asOf=today', '#query/asOf'],
  ])('refuses ?%s and names it', async (query, pointer) => {
    const owner = await signedIn();

    const { status, body } = await owner.get<Problem>(`/v1/due?${query}`);

    expect(status).toBe(422);
    expect(body.errors?.map((fault) => fault.pointer)).toEqual([pointer]);
  });
});
