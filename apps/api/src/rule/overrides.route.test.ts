import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { Override, OverridePage } from '@garboard/contract/rule/override.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, anOverride, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function aRaftAndAHose() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx, ['solas']);
  const { item: raft } = await anItem(ctx, vessel.id, 'liferaft');
  const { item: hose } = await anItem(ctx, vessel.id, 'gas_hose');
  await state(ctx, hose.id, { fact: 'installed', on: '2024-05-10' });
  const hoseDue = async (query = '') => {
    const { body } = await owner.get<ObligationList>(`/v1/items/${hose.id}/obligations${query}`);
    return body.items.find(({ ruleId }) => ruleId === 'lpg-hose');
  };
  return { owner, ctx, vessel, raft, hose, hoseDue, path: `/v1/vessels/${vessel.id}/overrides` };
}

const MAKERS = {
  ...{ ruleId: 'lpg-hose', duty: 'replacement', period: 'P4Y', weight: 'maker', from: '2026-03-01' },
  ...{ decidedBy: 'Anna Berg', reason: 'The maker gives it four years.', document: 'Data sheet H-88, page 2' },
};
const INSURERS = { ...MAKERS, ruleId: 'raft-solas', duty: 'service', period: 'P6M', weight: 'insurer' };
const pointers = ({ errors }: Problem) => errors?.map(({ pointer }) => pointer).sort();

describe('POST /v1/vessels/{vesselId}/overrides', () => {
  it('sets a figure, and what is owed carries it at once with its reasoning', async () => {
    const { owner, path, hoseDue } = await aRaftAndAHose();

    const { status, headers, body } = await owner.post<Override>(path, MAKERS);

    expect([status, headers.get('etag'), headers.get('location')]).toEqual([201, '"1"', `/v1/overrides/${body.id}`]);
    expect(body).toMatchObject({ ...MAKERS, version: 1 });
    const due = await hoseDue();
    expect(due).toMatchObject({ dueOn: '2028-05-10', weight: 'maker', explanation: { overrideId: body.id } });
    expect(due?.explanation.sentence).toContain(
      'Set by Anna Berg from 1 March 2026: “The maker gives it four years.” (Data sheet H-88, page 2).',
    );
  });

  it('answers for days before it took effect, and for what was known before, as published', async () => {
    const { owner, path, hoseDue } = await aRaftAndAHose();
    await owner.post(path, MAKERS);

    expect((await hoseDue('?asOf=2026-02-28'))?.dueOn).toBe('2029-05-10');
    expect((await hoseDue('?asOf=2026-03-01'))?.dueOn).toBe('2028-05-10');
    expect((await hoseDue('?asOf=2026-11-20&knownAt=2026-11-25T12:00:00Z'))?.weight).toBe('maker');
  });

  it('never loosens law, and says which figure stands against it', async () => {
    const { owner, path } = await aRaftAndAHose();

    const { status, body } = await owner.post<Problem>(path, { ...INSURERS, period: 'P13M' });

    expect(status).toBe(422);
    expect(body.errors).toEqual([
      {
        pointer: '/period',
        detail:
          'must not be longer than the 12 months that SOLAS, III/20.8.1 asks for: what binds can be tightened, never loosened',
      },
    ]);
  });

  it('names every fault', async () => {
    const { owner, path, raft } = await aRaftAndAHose();
    const unknown = {
      ...MAKERS,
      ruleId: 'no-rule',
      from: '2026-11-26',
      itemId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
    };

    const shape = await owner.post<Problem>(path, { ...MAKERS, period: '4 years', weight: 'law', decidedBy: ' ' });
    const known = await owner.post<Problem>(path, unknown);
    const duty = await owner.post<Problem>(path, { ...MAKERS, duty: 'service' });
    const kind = await owner.post<Problem>(path, { ...MAKERS, itemId: raft.id });

    expect([shape, known, duty, kind].map(({ status }) => status)).toEqual([422, 422, 422, 422]);
    expect([shape, known, duty, kind].map(({ body }) => pointers(body))).toEqual([
      ['/decidedBy', '/period', '/weight'],
      ['/from', '/itemId', '/ruleId'],
      ['/duty'],
      ['/ruleId'],
    ]);
  });

  it('takes no item of another vessel', async () => {
    const { owner, ctx, hose } = await aRaftAndAHose();
    const other = await aVessel(ctx);

    const { status, body } = await owner.post<Problem>(`/v1/vessels/${other.id}/overrides`, {
      ...MAKERS,
      itemId: hose.id,
    });

    expect([status, pointers(body)]).toEqual([422, ['/itemId']]);
  });
});

describe('GET /v1/vessels/{vesselId}/overrides', () => {
  it('lists the latest to take effect first, page after page', async () => {
    const { owner, path } = await aRaftAndAHose();
    for (const from of ['2026-01-01', '2026-03-01', '2026-02-01']) await owner.post(path, { ...MAKERS, from });

    const first = await owner.get<OverridePage>(`${path}?limit=2`);
    const second = await owner.get<OverridePage>(`${path}?limit=2&cursor=${first.body.nextCursor}`);

    const days = [first, second].map(({ body }) => body.items.map(({ from }) => from));
    expect(days).toEqual([['2026-03-01', '2026-02-01'], ['2026-01-01']]);
    expect(second.body.nextCursor).toBeNull();
  });
});

describe('POST /v1/overrides/{overrideId}/ending', () => {
  it('ends it from today on, and what counted before stays', async () => {
    const { owner, ctx, vessel, hoseDue } = await aRaftAndAHose();
    const { id } = await anOverride(ctx, vessel.id);

    const { status, headers, body } = await owner.post<Override>(
      `/v1/overrides/${id}/ending`,
      { reason: 'Another make was fitted.' },
      { 'if-match': '"1"' },
    );

    expect([status, headers.get('etag')]).toEqual([200, '"2"']);
    expect(body.ended).toMatchObject({ on: '2026-11-25', reason: 'Another make was fitted.' });
    expect((await hoseDue())?.weight).toBe('common_practice');
    expect((await hoseDue('?asOf=2026-11-24'))?.weight).toBe('maker');
    const read = await owner.get<Override>(`/v1/overrides/${id}`);
    expect([read.headers.get('etag'), read.body]).toEqual(['"2"', body]);
  });

  it('asks for the version that was read, and ends it only once', async () => {
    const { owner, ctx, vessel } = await aRaftAndAHose();
    const { id } = await anOverride(ctx, vessel.id);
    const end = (headers: Record<string, string>) =>
      owner.post(`/v1/overrides/${id}/ending`, { reason: 'Sold.' }, headers).then(({ status }) => status);

    expect(await end({})).toBe(428);
    expect(await end({ 'if-match': '"7"' })).toBe(412);
    expect(await end({ 'if-match': '"1"' })).toBe(200);
    expect(await end({ 'if-match': '"1"' })).toBe(412);
    expect(await end({ 'if-match': '"2"' })).toBe(409);
  });
});
