import { listItems } from '@garboard/db/item/items.ts';
import { listObligations } from '@garboard/db/item/obligations.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { VESSEL_TEMPLATES } from '@garboard/domain/vessel/template.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { accepted, mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { recompute } from '../upkeep/recompute.ts';
import { addItems } from './add-items.ts';
import type { ItemToAdd } from './put-aboard.ts';

const NOTHING_KNOWN = { zone: null, quantity: 1, maker: null, model: null, serialNumber: null, attributes: {} };
const thing = (kind: string, label: string): ItemToAdd => ({ ...NOTHING_KNOWN, kind, label });
const RAFT_AND_HOSE = [thing('liferaft', 'Liferaft'), thing('gas_hose', 'Gas hose, cooker')];

async function aFleet() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx, ['solas']);
  const inside = <T>(work: Parameters<typeof inOrganisation<T>>[2]) =>
    inOrganisation(pools.app, wholeFleet(organisation.id), work);
  const aboard = () => inside(async (tx) => (await listItems(tx, vessel.id, 200)).rows);
  const audited = () =>
    inside((tx) => tx.selectFrom('audit').select('subject_id').where('verb', '=', 'add_item').orderBy('id').execute());
  return { organisation, ctx, vessel, inside, aboard, audited };
}

describe('adding things at once', () => {
  it('puts them aboard in the order given, each with its line in the audit', async () => {
    const { ctx, vessel, aboard, audited } = await aFleet();

    const added = accepted(await addItems(ctx, { vesselId: vessel.id, items: RAFT_AND_HOSE }));

    expect(added.map(({ label }) => label)).toEqual(['Liferaft', 'Gas hose, cooker']);
    expect(await aboard()).toEqual(added);
    expect((await audited()).map((line) => line.subject_id)).toEqual(added.map(({ id }) => id));
  });

  it('gives each the obligations it would have had if it had been added alone', async () => {
    const { ctx, vessel, inside } = await aFleet();
    const alone = await anItem(ctx, vessel.id, 'liferaft');

    const [raft] = accepted(await addItems(ctx, { vesselId: vessel.id, items: RAFT_AND_HOSE }));

    const stored = (itemId: string) => inside((tx) => listObligations(tx, itemId));
    const obligations = await stored(raft?.id ?? '');
    expect(obligations.length).toBeGreaterThan(0);
    expect(obligations).toEqual(await stored(alone.item.id));
  });

  it.each(VESSEL_TEMPLATES)(
    'takes a whole template, and everything counted from it is right: $id',
    async (template) => {
      const { organisation, ctx, vessel, aboard } = await aFleet();
      const items = template.items.map((item) => ({ ...NOTHING_KNOWN, ...item }));

      accepted(await addItems(ctx, { vesselId: vessel.id, items }));

      expect(await aboard()).toHaveLength(template.items.length);
      expect(await recompute(pools.app, organisation.id)).toEqual({
        vessels: 1,
        obligations: 0,
        findings: 0,
        days: 0,
        unconfirmed: 0,
      });
    },
  );

  it('names every row whose kind the catalogue does not have, and adds nothing', async () => {
    const { ctx, vessel, aboard, audited } = await aFleet();
    const items = [thing('sea_anchor', 'Drogue'), ...RAFT_AND_HOSE, thing('parrot', 'Polly')];

    const refusal = await addItems(ctx, { vesselId: vessel.id, items });

    expect(refusal).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', errors: [{ pointer: '/items/0/kind' }, { pointer: '/items/3/kind' }] },
    });
    expect(await aboard()).toEqual([]);
    expect(await audited()).toEqual([]);
  });

  it('finds no vessel of another organisation, and lets in only who keeps the register', async () => {
    const { organisation, vessel, aboard } = await aFleet();
    const stranger = await mintOrganisation(pools);
    const asked = { vesselId: vessel.id, items: RAFT_AND_HOSE };

    expect(await addItems(stranger.ctx(), asked)).toEqual({ ok: false, failure: { kind: 'not_found' } });
    expect(await addItems(organisation.ctx('yard'), asked)).toEqual({ ok: false, failure: { kind: 'forbidden' } });
    expect(await aboard()).toEqual([]);
  });
});
