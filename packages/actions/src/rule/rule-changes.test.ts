import { listObligations } from '@garboard/db/item/obligations.ts';
import { loadOwnRule } from '@garboard/db/rule/own-rules.ts';
import { loadRuleChange } from '@garboard/db/rule/rule-changes.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, NOW, type TestOrganisation } from '@garboard/tests/support/organisation.ts';
import { anOwnRule, aVersion } from '@garboard/tests/support/own-rules.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { recompute } from '../upkeep/recompute.ts';
import { changeVessel } from '../vessel/change-vessel.ts';
import { workThroughRuleChanges } from './work-through-rule-changes.ts';

const RIGHT = { obligations: 0, findings: 0, days: 0 };
const days = (n: number) => new Date(NOW.getTime() + n * 86_400_000);

async function twoHoses() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const aboard = async (name: string, on: string) => {
    const vessel = await aVessel(ctx, [], name);
    const { item } = await anItem(ctx, vessel.id, 'gas_hose');
    await state(ctx, item.id, { fact: 'installed', on });
    return { vessel, item };
  };
  const [teal, widgeon] = [await aboard('Teal', '2026-05-10'), await aboard('Widgeon', '2026-08-31')];
  return {
    organisation,
    ctx,
    teal,
    widgeon,
    own: () => Promise.all([teal, widgeon].map((each) => ownDay(organisation, each.item.id))),
  };
}

const ownDay = ({ id }: TestOrganisation, itemId: string) =>
  inOrganisation(pools.app, wholeFleet(id), async (tx) => {
    const own = (await listObligations(tx, itemId)).find(({ scheme }) => scheme === 'own');
    return own && (own.outcome.kind === 'dated' ? formatDay(own.outcome.dueOn) : 'unknown');
  });

const workThrough = (organisation: TestOrganisation, at = NOW) =>
  workThroughRuleChanges(pools.app, organisation.id, at);

describe('a rule of one’s own', () => {
  it('stands on everything that it bears on once its change is worked through, and says how far that is', async () => {
    const { organisation, ctx, own } = await twoHoses();
    const rule = await anOwnRule(ctx);
    const changeId = rule.versions[0]?.changeId ?? '';
    const change = () => inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => loadRuleChange(tx, changeId));

    expect(await own()).toEqual([undefined, undefined]);
    expect(await change()).toMatchObject({ itemsTotal: 2, itemsDone: 0, finishedAt: null });
    expect(await workThrough(organisation)).toEqual({ begun: 0, finished: 1 });

    expect(await own()).toEqual(['2026-06-10', '2026-09-30']);
    expect(await change()).toMatchObject({ itemsTotal: 2, itemsDone: 2, obligationsChanged: 2 });
    expect((await change())?.finishedAt).not.toBeNull();
    expect(await recompute(pools.app, organisation.id)).toMatchObject(RIGHT);
  });

  it('counts for what is recorded before its change has come so far', async () => {
    const { organisation, ctx, teal, own } = await twoHoses();
    await anOwnRule(ctx);
    await state(ctx, teal.item.id, { fact: 'inspected', on: '2026-11-20' });

    expect(await own()).toEqual(['2026-12-20', undefined]);
    expect(await workThrough(organisation)).toEqual({ begun: 0, finished: 1 });
    expect(await own()).toEqual(['2026-12-20', '2026-09-30']);
  });

  it('bears on the vessels chosen, on those under a scheme, and follows a vessel that comes under it', async () => {
    const { organisation, ctx, widgeon, own } = await twoHoses();
    await anOwnRule(ctx, { vessels: { which: 'chosen', vesselIds: [widgeon.vessel.id] } });
    await workThrough(organisation);
    expect(await own()).toEqual([undefined, '2026-09-30']);

    const other = await twoHoses();
    await anOwnRule(other.ctx, { vessels: { which: 'under_scheme', scheme: 'solas' } });
    await workThrough(other.organisation);
    expect(await other.own()).toEqual([undefined, undefined]);
    await changeVessel(other.ctx, {
      vesselId: other.teal.vessel.id,
      expectedVersion: 1,
      change: { schemes: ['solas'] },
    });
    expect(await other.own()).toEqual(['2026-06-10', undefined]);
  });

  it('is taken up on its day and not before, though nobody asks', async () => {
    const { organisation, ctx, teal, own } = await twoHoses();
    const rule = await anOwnRule(ctx, {}, '2026-12-01');
    await state(ctx, teal.item.id, { fact: 'moved', on: '2026-11-20' });

    expect(rule.versions[0]?.changeId).toBeNull();
    expect(await workThrough(organisation, days(5))).toEqual({ begun: 0, finished: 0 });
    expect(await own()).toEqual([undefined, undefined]);
    expect(await workThrough(organisation, days(9))).toEqual({ begun: 1, finished: 1 });
    expect(await own()).toEqual(['2026-06-10', '2026-09-30']);
    expect(await workThrough(organisation, days(9))).toEqual({ begun: 0, finished: 0 });
  });

  it('goes over to another version and to its end, each on its day, with what no longer bears taken away', async () => {
    const { organisation, ctx, widgeon, own } = await twoHoses();
    const first = await anOwnRule(ctx);
    await workThrough(organisation);
    const next = await aVersion(
      ctx,
      first,
      {
        limits: [{ kind: 'interval', from: 'last_done', plus: 'P3M' }],
        first: { from: 'installed', plus: 'P3M' },
        vessels: { which: 'chosen', vesselIds: [widgeon.vessel.id] },
      },
      '2026-11-01',
    );
    await workThrough(organisation);
    expect(await own()).toEqual([undefined, '2026-11-30']);

    await aVersion(ctx, next, null, '2026-12-24');
    await workThrough(organisation);
    expect(await own()).toEqual([undefined, '2026-11-30']);
    await workThrough(organisation, days(29));
    expect(await own()).toEqual([undefined, undefined]);
    expect(await recompute(pools.app, organisation.id)).toMatchObject(RIGHT);
  });

  it('takes its versions one after the other where two are laid down at once', async () => {
    const { organisation, ctx } = await twoHoses();
    const rule = await anOwnRule(ctx);

    const both = await Promise.allSettled(
      ['2026-06-01', '2026-07-01'].map((on) => aVersion(ctx, rule, { weight: 'maker' }, on)),
    );

    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
    const kept = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => loadOwnRule(tx, rule.id));
    expect(kept?.versions.map(({ number }) => number)).toEqual([1, 2]);
  });

  it('leaves a line in the audit for each version and each change', async () => {
    const { organisation, ctx } = await twoHoses();
    const rule = await anOwnRule(ctx);
    const next = await aVersion(ctx, rule, { weight: 'maker' }, '2026-12-01');
    await aVersion(ctx, next, null, '2026-12-24');
    await workThrough(organisation, days(60));

    const lines = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) =>
      tx.selectFrom('audit').select('verb').where('subject', 'in', ['rule', 'rule_change']).orderBy('id').execute(),
    );
    expect(lines.map(({ verb }) => verb)).toEqual([
      'add_rule',
      'begin_rule_change',
      'change_rule',
      'end_rule',
      'begin_rule_change',
      'begin_rule_change',
    ]);
  });
});
