import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { VesselEvent, VesselEventPage } from '@garboard/contract/vessel/situation.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function eventsOfATeal() {
  const owner = await signedIn();
  const { id } = await aVessel(owner.organisation.ctx(), ['us_sailing_school']);
  return { owner, id, path: `/v1/vessels/${id}/events` };
}

describe('POST /v1/vessels/{vesselId}/events', () => {
  it('records what happened to her', async () => {
    const { owner, path } = await eventsOfATeal();

    const { status, headers, body } = await owner.post<VesselEvent>(path, {
      event: 'grounding',
      on: '2026-08-14',
      note: 'Soft mud',
    });

    expect(status).toBe(201);
    expect(headers.get('location')).toBe(path);
    expect(body).toMatchObject({ event: 'grounding', on: '2026-08-14', planned: false, note: 'Soft mud' });
  });

  it('moves what depends on it at once', async () => {
    const { owner, id, path } = await eventsOfATeal();
    const { item } = await anItem(owner.organisation.ctx(), id, 'hand_flare');
    await state(owner.organisation.ctx(), item.id, { fact: 'printed_expiry', on: '2027-01-31' });

    await owner.post(path, { event: 'inspection', on: '2027-04-20', planned: true });

    const { body } = await owner.get<ObligationList>(`/v1/items/${item.id}/obligations`);
    expect(body.items.map(({ replaceBy }) => replaceBy)).toContain('2027-04-20');
  });

  it('asks for a day ahead to be called planned', async () => {
    const { owner, path } = await eventsOfATeal();

    const { status, body } = await owner.post<Problem>(path, { event: 'inspection', on: '2027-03-18' });

    expect(status).toBe(422);
    expect(body.errors).toEqual([{ pointer: '/on', detail: 'lies in the future: say that it is planned' }]);
  });

  it('names every fault', async () => {
    const { owner, path } = await eventsOfATeal();

    const { body } = await owner.post<Problem>(path, { event: 'mutiny', on: '2026-13-01', planned: 1, note: '\u0007' });

    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual(['/event', '/note', '/on', '/planned']);
  });
});

describe('GET /v1/vessels/{vesselId}/events', () => {
  it('lists the latest first, what is planned before what was', async () => {
    const { owner, path } = await eventsOfATeal();
    await owner.post(path, { event: 'inspection', on: '2027-03-18', planned: true });
    await owner.post(path, { event: 'gale', on: '2026-01-03' });
    await owner.post(path, { event: 'lightning', on: '2026-07-09' });

    const { body } = await owner.get<VesselEventPage>(`${path}?limit=2`);
    const { body: rest } = await owner.get<VesselEventPage>(`${path}?limit=2&cursor=${body.nextCursor}`);

    expect([...body.items, ...rest.items].map(({ event }) => event)).toEqual(['inspection', 'lightning', 'gale']);
  });
});
