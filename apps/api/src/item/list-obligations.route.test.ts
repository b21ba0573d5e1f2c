import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const STATION = { capacity: 'liferaft_service_station' } as const;

/** Made in 2019, serviced in 2024 and again in 2026; each learned on its own day. */
async function aServicedRaft() {
  const owner = await signedIn();
  const { ctx } = owner.organisation;
  const vessel = await aVessel(ctx(), ['solas']);
  const { item } = await anItem(ctx('owner', new Date('2019-06-01T12:00:00Z')), vessel.id, 'liferaft');
  for (const on of ['2024-05-02', '2026-05-06']) {
    await state(ctx('owner', new Date(`${on}T12:00:00Z`)), item.id, { fact: 'serviced', on, doneBy: STATION });
  }
  return { owner, path: `/v1/items/${item.id}/obligations` };
}

const service = ({ items }: ObligationList) => items.find(({ ruleId }) => ruleId === 'raft-solas');

describe('GET /v1/items/{itemId}/obligations', () => {
  it('answers as at today, which it names', async () => {
    const { owner, path } = await aServicedRaft();

    const { body } = await owner.get<ObligationList>(path);

    expect(body.asOf).toBe('2026-11-25');
    expect(service(body)).toMatchObject({ dueOn: '2027-05-06', standing: 'in_date' });
  });

  it('answers as at a day to come from the same facts', async () => {
    const { owner, path } = await aServicedRaft();

    const { body } = await owner.get<ObligationList>(`${path}?asOf=2027-05-07`);

    expect(service(body)).toMatchObject({ dueOn: '2027-05-06', standing: 'overdue' });
    expect(service(body)?.explanation.wouldChangeIt[0]).toMatchObject({
      ifDoneOn: '2027-05-07',
      movesTo: '2028-05-07',
    });
  });

  it('answers as at a day gone by without what was done later', async () => {
    const { owner, path } = await aServicedRaft();

    const { body } = await owner.get<ObligationList>(`${path}?asOf=2025-05-03`);

    expect(body.asOf).toBe('2025-05-03');
    expect(service(body)).toMatchObject({ dueOn: '2025-05-02', standing: 'overdue' });
  });

  it('answers from what was known at an instant', async () => {
    const { owner, path } = await aServicedRaft();

    const { body } = await owner.get<ObligationList>(`${path}?knownAt=2026-05-06T11:59:59%2B00:00`);

    expect(service(body)).toMatchObject({ dueOn: '2025-05-02', standing: 'overdue' });
  });

  it('keeps since when a duty is suspended with what is stored, and tells it on days that lie in it', async () => {
    const owner = await signedIn();
    const vessel = await aVessel(owner.organisation.ctx(), ['us_sailing_school']);
    const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'portable_extinguisher_foam');
    const ask = async (query = '') => {
      const { body } = await owner.get<ObligationList>(`/v1/items/${item.id}/obligations${query}`);
      return body.items.find(({ ruleId }) => ruleId === 'fe-us-school');
    };
    expect(await ask()).not.toHaveProperty('suspendedFrom');

    const situations = `/v1/vessels/${vessel.id}/situations`;
    await owner.post(situations, { from: '2026-10-01', place: 'ashore', use: 'laid_up', dismantled: true });
    expect(await ask()).toMatchObject({ standing: 'unknown', suspendedFrom: '2026-10-01' });
    expect(await ask('?asOf=2026-09-30')).not.toHaveProperty('suspendedFrom');

    await owner.post(situations, { from: '2027-04-01', place: 'afloat', use: 'in_commission' });
    expect(await ask()).toMatchObject({ suspendedFrom: '2026-10-01', suspendedUntil: '2027-03-31' });
  });

  it('takes today from the vessel’s own place', async () => {
    const owner = await signedIn('owner', await mintOrganisation(pools, 'Pacific/Kiritimati'));
    const { body: vessel } = await owner.post<{ id: string }>('/v1/vessels', {
      name: 'Frigate',
      timeZone: 'Pacific/Kiritimati',
    });
    const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'gas_hose');

    const { body } = await owner.get<ObligationList>(`/v1/items/${item.id}/obligations`);

    expect(body.asOf).toBe('2026-11-26');
  });

  it('puts what is dated first and what has no date last', async () => {
    const { owner, path } = await aServicedRaft();

    const { body } = await owner.get<ObligationList>(path);

    const dates = body.items.map(({ overdueAfter }) => overdueAfter ?? '9999');
    expect(dates).toEqual(dates.toSorted());
    expect(dates.at(-1)).toBe('9999');
  });

  it.each([
    ['asOf=2026-02-30', '#query/asOf'],
    ['asOf=1899-12-31', '#query/asOf'],
    ['asOf=', '#query/asOf'],
    ['knownAt=2026-05-06', '#query/knownAt'],
    ['asof=2026-05-06', '#query/asof'],
  ])('refuses ?%s and names it', async (query, pointer) => {
    const { owner, path } = await aServicedRaft();

    const { status, body } = await owner.get<Problem>(`${path}?${query}`);

    expect(status).toBe(422);
    expect(body.errors?.map((fault) => fault.pointer)).toEqual([pointer]);
  });
});
