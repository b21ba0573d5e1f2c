import { listFacts } from '@garboard/db/item/facts.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import { listObligations } from '@garboard/db/item/obligations.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { accepted, mintOrganisation, particulars, TODAY } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state, statement } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { createVessel } from '../vessel/create-vessel.ts';
import { recordFact } from './record-fact.ts';

async function aHose() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx);
  const { item, obligations } = await anItem(ctx, vessel.id, 'gas_hose', 'Gas hose, cooker');
  const inside = <T>(work: Parameters<typeof inOrganisation<T>>[2]) =>
    inOrganisation(pools.app, wholeFleet(organisation.id), work);
  return { organisation, ctx, vessel, item, obligations, inside };
}

const dueOn = (obligations: readonly Obligation[], ruleId: string) => {
  const outcome = obligations.find((each) => each.ruleId === ruleId)?.outcome;
  return outcome?.kind === 'dated' ? formatDay(outcome.dueOn) : outcome?.kind;
};

describe('recording a fact', () => {
  it('leaves a new item with duties and no date to go by', async () => {
    const { obligations } = await aHose();
    expect(dueOn(obligations, 'lpg-hose')).toBe('undated');
  });

  it('answers with the new due date, and the stored one is the same', async () => {
    const { ctx, item, inside } = await aHose();
    const { obligations } = await state(ctx, item.id, { fact: 'installed', on: '2024-05-10' });

    expect(dueOn(obligations, 'lpg-hose')).toBe('2029-05-10');
    expect(await inside((tx) => listObligations(tx, item.id))).toEqual(obligations);
  });

  it('makes a new version of the item, and refuses a writer who read the old one', async () => {
    const { ctx, item, inside } = await aHose();
    await state(ctx, item.id, { fact: 'installed', on: '2024-05-10' });

    const late = await recordFact(ctx, {
      itemId: item.id,
      expectedVersion: item.version,
      fact: statement({ fact: 'installed', on: '2025-05-10' }),
    });

    expect(late).toEqual({ ok: false, failure: { kind: 'stale', version: item.version + 1 } });
    expect((await inside((tx) => listFacts(tx, item.id, 50))).rows).toHaveLength(1);
  });

  it('takes a correction: the date follows it, and the wrong fact stays, struck out', async () => {
    const { ctx, item, inside } = await aHose();
    const wrong = await state(ctx, item.id, { fact: 'installed', on: '2014-05-10' });
    const right = await state(ctx, item.id, { fact: 'installed', on: '2024-05-10', corrects: wrong.fact.id });

    expect(dueOn(right.obligations, 'lpg-hose')).toBe('2029-05-10');
    const { rows } = await inside((tx) => listFacts(tx, item.id, 50));
    expect(rows.map(({ on, struckOutBy }) => [on, struckOutBy])).toEqual([
      ['2014-05-10', right.fact.id],
      ['2024-05-10', null],
    ]);
  });

  it('refuses a second correction of the same fact', async () => {
    const { ctx, item } = await aHose();
    const wrong = await state(ctx, item.id, { fact: 'installed', on: '2014-05-10' });
    await state(ctx, item.id, { fact: 'installed', on: '2024-05-10', corrects: wrong.fact.id });

    const again = await recordFact(ctx, {
      itemId: item.id,
      fact: statement({ fact: 'installed', on: '2024-06-10', corrects: wrong.fact.id }),
    });
    expect(again).toMatchObject({ ok: false, failure: { kind: 'invalid', errors: [{ pointer: '/corrects' }] } });
  });

  it('remembers on which day a plate was read: today, where nobody said', async () => {
    const { ctx, item } = await aHose();
    const { fact } = await state(ctx, item.id, { fact: 'manufactured', on: '2023-11' });
    expect(fact.readOn).toBe(TODAY);
  });

  it('refuses a fitting in the future and writes nothing', async () => {
    const { ctx, item, inside } = await aHose();
    const refusal = await recordFact(ctx, {
      itemId: item.id,
      fact: statement({ fact: 'installed', on: '2026-11-26' }),
    });

    expect(refusal).toMatchObject({ ok: false, failure: { kind: 'invalid', errors: [{ pointer: '/on' }] } });
    expect(await inside((tx) => loadItem(tx, item.id))).toEqual(item);
  });

  it('takes the day from the vessel’s own place: it can be tomorrow there already', async () => {
    const { organisation } = await aHose();
    const ctx = organisation.ctx();
    const far = accepted(await createVessel(ctx, { ...particulars(), timeZone: 'Pacific/Auckland' }));
    const { item } = await anItem(ctx, far.id, 'gas_hose');
    const { fact } = await state(ctx, item.id, { fact: 'installed', on: '2026-11-26' });
    expect(fact.on).toBe('2026-11-26');
  });

  it('is not found for another organisation, and forbidden to one who only looks', async () => {
    const { item, organisation } = await aHose();
    const stranger = await mintOrganisation(pools);
    const fact = statement({ fact: 'installed', on: '2024-05-10' });

    expect(await recordFact(stranger.ctx(), { itemId: item.id, fact })).toEqual({
      ok: false,
      failure: { kind: 'not_found' },
    });
    expect(await recordFact(organisation.ctx('viewer'), { itemId: item.id, fact })).toEqual({
      ok: false,
      failure: { kind: 'forbidden' },
    });
    expect((await recordFact(organisation.ctx('yard'), { itemId: item.id, fact })).ok).toBe(true);
  });
});

describe('a withdrawn item', () => {
  it('has no duties any more, and has them again when it is replaced', async () => {
    const { ctx, item, inside } = await aHose();
    await state(ctx, item.id, { fact: 'installed', on: '2019-05-10' });
    const withdrawn = await state(ctx, item.id, { fact: 'withdrawn', on: '2026-10-01' });
    expect(withdrawn.obligations).toEqual([]);
    expect((await inside((tx) => loadItem(tx, item.id)))?.withdrawn).toBe(true);

    const replaced = await state(ctx, item.id, { fact: 'replaced', on: '2026-11-20' });
    expect(dueOn(replaced.obligations, 'lpg-hose')).toBe('2031-11-20');
    expect((await inside((tx) => loadItem(tx, item.id)))?.withdrawn).toBe(false);
  });
});
