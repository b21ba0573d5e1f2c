import { listObligations } from '@garboard/db/item/obligations.ts';
import { loadOverrides } from '@garboard/db/rule/overrides.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { accepted, mintOrganisation, NOW } from '@garboard/tests/support/organisation.ts';
import { anItem, anOverride, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { recompute } from '../upkeep/recompute.ts';
import { endOverride } from './end-override.ts';
import { setOverride } from './set-override.ts';

async function aVesselWithTwoHoses() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx, ['solas']);
  const hoses = [];
  for (const on of ['2024-05-10', '2025-05-10']) {
    const { item } = await anItem(ctx, vessel.id, 'gas_hose');
    await state(ctx, item.id, { fact: 'installed', on });
    hoses.push(item.id);
  }
  const standing = (itemId: string) =>
    inOrganisation(pools.app, wholeFleet(organisation.id), async (tx) => {
      const of = (await listObligations(tx, itemId)).find(({ ruleId }) => ruleId === 'lpg-hose');
      return of && [of.weight, of.outcome.kind === 'dated' ? of.outcome.dueOn - NOW.getTime() / 86_400_000 : null];
    });
  const [first = '', second = ''] = hoses;
  const dates = () => Promise.all([first, second].map(standing));
  return { organisation, ctx, vessel, first, second, dates };
}

describe('setting a figure of one’s own', () => {
  it('changes what is owed on everything aboard that the rule bears on, in one go', async () => {
    const { ctx, vessel, dates } = await aVesselWithTwoHoses();
    const published = await dates();

    await anOverride(ctx, vessel.id, { period: 'P4Y' });

    const own = await dates();
    expect(published.map((one) => one?.[0])).toEqual(['common_practice', 'common_practice']);
    expect(own.map((one) => one?.[0])).toEqual(['maker', 'maker']);
    expect(own.map((one, at) => Number(published[at]?.[1]) - Number(one?.[1]))).toEqual([365, 365]);
  });

  it('changes one item only where it names one', async () => {
    const { ctx, vessel, first, dates } = await aVesselWithTwoHoses();

    await anOverride(ctx, vessel.id, { itemId: first });

    expect((await dates()).map((one) => one?.[0])).toEqual(['maker', 'common_practice']);
  });

  it('leaves what is stored equal to what is worked out anew, set and ended, with facts that came later', async () => {
    const { organisation, ctx, vessel, first } = await aVesselWithTwoHoses();
    const { item } = await anItem(ctx, vessel.id, 'liferaft');
    await anOverride(ctx, vessel.id, { itemId: first });
    const letter = await anOverride(ctx, vessel.id, {
      ruleId: 'raft-solas',
      duty: 'service',
      period: 'P6M',
      weight: 'insurer',
    });
    await state(ctx, item.id, { fact: 'serviced', on: '2026-11-04', doneBy: { capacity: 'liferaft_service_station' } });
    const right = { vessels: 1, obligations: 0, findings: 0, days: 0, unconfirmed: 0 };
    expect(await recompute(pools.app, organisation.id)).toEqual(right);

    accepted(await endOverride(ctx, { overrideId: letter.id, expectedVersion: 1, reason: 'another insurer' }));

    expect(await recompute(pools.app, organisation.id)).toEqual(right);
  });

  it('keeps law on the list beside the tighter figure, and takes the tighter one away when it ends', async () => {
    const { organisation, ctx, vessel } = await aVesselWithTwoHoses();
    const { item } = await anItem(ctx, vessel.id, 'liferaft');
    const weights = () =>
      inOrganisation(pools.app, wholeFleet(organisation.id), async (tx) =>
        (await listObligations(tx, item.id))
          .filter(({ ruleId }) => ruleId === 'raft-solas')
          .map(({ duty, weight }) => [duty, weight]),
      );
    const letter = await anOverride(ctx, vessel.id, {
      ruleId: 'raft-solas',
      duty: 'service',
      period: 'P6M',
      weight: 'insurer',
    });

    expect(await weights()).toEqual([
      ['service', 'law'],
      ['service.tightened', 'insurer'],
    ]);
    accepted(await endOverride(ctx, { overrideId: letter.id, expectedVersion: 1, reason: 'another insurer' }));
    expect(await weights()).toEqual([['service', 'law']]);
  });

  it('is refused where it would loosen law, and writes nothing', async () => {
    const { organisation, ctx, vessel } = await aVesselWithTwoHoses();

    const result = await setOverride(ctx, {
      ...{
        vesselId: vessel.id,
        itemId: null,
        ruleId: 'raft-solas',
        duty: 'service',
        period: 'P13M',
        weight: 'insurer',
      },
      ...{ decidedBy: 'Anna Berg', reason: 'cheaper', document: 'none', from: '2026-03-01' },
    });

    expect(result).toMatchObject({ ok: false, failure: { kind: 'invalid', errors: [{ pointer: '/period' }] } });
    expect(await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => loadOverrides(tx, vessel.id))).toEqual(
      [],
    );
  });

  it('ends once where two end it at the same time', async () => {
    const { ctx, vessel } = await aVesselWithTwoHoses();
    const { id } = await anOverride(ctx, vessel.id);

    const ends = [1, 2, 3].map(() => endOverride(ctx, { overrideId: id, expectedVersion: 1, reason: 'sold' }));

    expect((await Promise.all(ends)).filter(({ ok }) => ok)).toHaveLength(1);
  });
});
