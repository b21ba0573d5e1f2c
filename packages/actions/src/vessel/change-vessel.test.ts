import { listObligations } from '@garboard/db/item/obligations.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { accepted, mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { changeVessel } from './change-vessel.ts';

async function aTeal() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx);
  const load = () => inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => loadVessel(tx, vessel.id));
  return { organisation, ctx, vessel, load };
}

describe('changing a vessel', () => {
  it('changes what is named, keeps the rest and counts the version up', async () => {
    const { ctx, vessel, load } = await aTeal();
    const changed = accepted(
      await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 1, change: { rig: 'sloop', builtYear: 1998 } }),
    );

    expect(changed).toEqual({ ...vessel, rig: 'sloop', builtYear: 1998, version: 2 });
    expect(await load()).toEqual(changed);
  });

  it('refuses a stale version and changes nothing', async () => {
    const { ctx, vessel, load } = await aTeal();
    accepted(await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 1, change: { rig: 'sloop' } }));
    const late = await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 1, change: { rig: 'ketch' } });

    expect(late).toEqual({ ok: false, failure: { kind: 'stale', version: 2 } });
    expect((await load())?.rig).toBe('sloop');
  });

  it('lets one of two writers win who read the same version', async () => {
    const { ctx, vessel } = await aTeal();
    const rigs = ['sloop', 'ketch', 'yawl', 'cutter'];
    const results = await Promise.all(
      rigs.map((rig) => changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 1, change: { rig } })),
    );
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('brings the duties of a scheme that she is put under, and takes them away again', async () => {
    const { organisation, ctx, vessel } = await aTeal();
    const { item } = await anItem(ctx, vessel.id, 'liferaft');
    await state(ctx, item.id, { fact: 'serviced', on: '2025-11-04', doneBy: { capacity: 'liferaft_service_station' } });
    const rules = () =>
      inOrganisation(pools.app, wholeFleet(organisation.id), async (tx) =>
        (await listObligations(tx, item.id)).map(({ ruleId }) => ruleId),
      );

    expect(await rules()).not.toContain('raft-solas');
    await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 1, change: { schemes: ['solas'] } });
    expect(await rules()).toContain('raft-solas');
    await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 2, change: { schemes: [] } });
    expect(await rules()).not.toContain('raft-solas');
  });

  it('is not found for another organisation', async () => {
    const { vessel } = await aTeal();
    const stranger = await mintOrganisation(pools);
    const refusal = await changeVessel(stranger.ctx(), {
      vesselId: vessel.id,
      expectedVersion: 1,
      change: { rig: 'sloop' },
    });
    expect(refusal).toEqual({ ok: false, failure: { kind: 'not_found' } });
  });

  it.each(['surveyor', 'yard', 'viewer'] as const)('is forbidden to a %s', async (role) => {
    const { organisation, vessel } = await aTeal();
    const refusal = await changeVessel(organisation.ctx(role), {
      vesselId: vessel.id,
      expectedVersion: 1,
      change: { rig: 'sloop' },
    });
    expect(refusal).toEqual({ ok: false, failure: { kind: 'forbidden' } });
  });
});
