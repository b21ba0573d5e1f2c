import type { Problem } from '@garboard/contract/problem.ts';
import type { Situation, SituationPage } from '@garboard/contract/vessel/situation.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function situationsOfATeal() {
  const owner = await signedIn();
  const { id } = await aVessel(owner.organisation.ctx());
  return { owner, path: `/v1/vessels/${id}/situations` };
}

const ASHORE = { from: '2026-11-02', place: 'ashore', use: 'laid_up' };

describe('POST /v1/vessels/{vesselId}/situations', () => {
  it('states what she is doing from a day on', async () => {
    const { owner, path } = await situationsOfATeal();

    const { status, headers, body } = await owner.post<Situation>(path, { ...ASHORE, dismantled: true });

    expect(status).toBe(201);
    expect(headers.get('location')).toBe(path);
    expect(body).toMatchObject({ ...ASHORE, dismantled: true, underRepair: false });
  });

  it('names every fault', async () => {
    const { owner, path } = await situationsOfATeal();

    const { status, body } = await owner.post<Problem>(path, { from: '2026-02-30', place: 'sunk', dismantled: 'yes' });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual(['/dismantled', '/from', '/place', '/use']);
  });

  it('names an absurd day', async () => {
    const { owner, path } = await situationsOfATeal();

    const { status, body } = await owner.post<Problem>(path, { ...ASHORE, from: '0001-01-01' });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['/from']);
  });

  it('refuses whoever does not keep the register', async () => {
    const { owner, path } = await situationsOfATeal();
    const surveyor = await owner.as('surveyor');

    expect((await surveyor.post(path, ASHORE)).status).toBe(403);
  });
});

describe('GET /v1/vessels/{vesselId}/situations', () => {
  it('lists the latest first, page after page, and past ones stay', async () => {
    const { owner, path } = await situationsOfATeal();
    for (const from of ['2025-10-20', '2026-04-10', '2026-11-02']) await owner.post(path, { ...ASHORE, from });

    const first = await owner.get<SituationPage>(`${path}?limit=2`);
    const second = await owner.get<SituationPage>(`${path}?limit=2&cursor=${first.body.nextCursor}`);

    const days = [first, second].map(({ body }) => body.items.map(({ from }) => from));
    expect(days).toEqual([['2026-11-02', '2026-04-10'], ['2025-10-20']]);
    expect(second.body.nextCursor).toBeNull();
  });

  it('gives each once where several begin on one day', async () => {
    const { owner, path } = await situationsOfATeal();
    for (const use of ['laid_up', 'out_of_service', 'in_commission']) await owner.post(path, { ...ASHORE, use });

    const first = await owner.get<SituationPage>(`${path}?limit=1`);
    const rest = await owner.get<SituationPage>(`${path}?cursor=${first.body.nextCursor}`);

    expect([...first.body.items, ...rest.body.items].map(({ use }) => use)).toEqual([
      'in_commission',
      'out_of_service',
      'laid_up',
    ]);
  });

  it('refuses the cursor of another vessel’s list', async () => {
    const { owner, path } = await situationsOfATeal();
    for (const from of ['2025-10-20', '2026-04-10']) await owner.post(path, { ...ASHORE, from });
    const { id } = await aVessel(owner.organisation.ctx());
    const { body } = await owner.get<SituationPage>(`${path}?limit=1`);

    const { status } = await owner.get(`/v1/vessels/${id}/situations?limit=1&cursor=${body.nextCursor}`);

    expect(status).toBe(422);
  });
});
