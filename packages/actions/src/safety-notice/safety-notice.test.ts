import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import { listStored } from '@garboard/db/due-list/list-stored.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import { countAnswers } from '@garboard/db/safety-notice/count-answers.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { parseDay } from '@garboard/domain/calendar/day.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { aNotice, answered, done, HOSE_NOTICE, hosePlate } from '@garboard/tests/support/notices.ts';
import { accepted, mintOrganisation, particulars, TODAY } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import fc from 'fast-check';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { addItem } from '../item/add-item.ts';
import { changeItem } from '../item/change-item.ts';
import { recompute } from '../upkeep/recompute.ts';
import { answerNotice } from './answer-notice.ts';
import { enterNotice } from './enter-notice.ts';
import { withdrawNotice } from './withdraw-notice.ts';

const RIGHT = { obligations: 0, findings: 0, days: 0, unconfirmed: 0 };

async function aFleetWithHoses() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const [teal, wigeon] = [await aVessel(ctx, [], 'Teal'), await aVessel(ctx, [], 'Wigeon')];
  const hose = async (vesselId: string, serial: string | null) =>
    (await anItem(ctx, vesselId, 'gas_hose', 'Gas hose', hosePlate(serial))).item.id;
  const within = await hose(teal.id, 'AB1250');
  const unread = await hose(wigeon.id, null);
  const outside = await hose(wigeon.id, 'AB1400');
  const owed = async () => {
    const day = parseDay(TODAY);
    if (day === null) throw new Error('no day');
    const { rows } = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) =>
      listStored(tx, { day, filter: {}, limit: 200 }),
    );
    return rows
      .filter(({ obligation }) => obligation.explanation.notice)
      .map(({ item, obligation }) => [item.id, obligation.explanation.notice?.match])
      .sort();
  };
  const sound = async () => {
    const { vessels: _, ...rest } = await recompute(pools.app, organisation.id);
    expect(rest).toEqual(RIGHT);
  };
  return { organisation, ctx, teal, wigeon, within, unread, outside, owed, sound };
}

describe('entering a notice', () => {
  it('puts an obligation on everything that it covers or may cover, across the fleet, and on nothing else', async () => {
    const { ctx, within, unread, owed, sound } = await aFleetWithHoses();
    await aNotice(ctx);
    expect(await owed()).toEqual(
      [
        [within, 'affected'],
        [unread, 'may_be_affected'],
      ].sort(),
    );
    await sound();
  });

  it('names every fault and writes nothing', async () => {
    const { ctx, owed } = await aFleetWithHoses();
    const result = await enterNotice(ctx, { ...HOSE_NOTICE, kinds: [], issuedOn: '2026-12-01', document: null });
    expect(result).toMatchObject({ ok: false, failure: { kind: 'invalid' } });
    expect(await owed()).toEqual([]);
  });

  it('asks to look at what came in place of a thing whose number was written down before', async () => {
    const { organisation, ctx, wigeon, owed, sound } = await aFleetWithHoses();
    const inJanuary = organisation.ctx('owner', new Date('2026-01-10T12:00:00Z'));
    const { item } = await anItem(inJanuary, wigeon.id, 'gas_hose', 'Old hose', hosePlate('AB1400'));
    await state(ctx, item.id, { fact: 'replaced', on: '2026-06-01' });
    await aNotice(ctx);
    expect(await owed()).toContainEqual([item.id, 'may_be_affected']);
    await sound();
  });

  it('is for who keeps the register', async () => {
    const { organisation } = await aFleetWithHoses();
    const result = await enterNotice(organisation.ctx('yard'), HOSE_NOTICE);
    expect(result).toEqual({ ok: false, failure: { kind: 'forbidden' } });
  });

  it('is for who may see the whole fleet', async () => {
    const { ctx, teal } = await aFleetWithHoses();
    const narrowed = { ...ctx, vesselIds: [teal.id] };
    const { id } = await aNotice(ctx);
    const withdrawal = { noticeId: id, expectedVersion: 1, reason: 'sent out in error' };
    const forbidden = { ok: false, failure: { kind: 'forbidden' } };
    expect(await enterNotice(narrowed, HOSE_NOTICE)).toEqual(forbidden);
    expect(await withdrawNotice(narrowed, withdrawal)).toEqual(forbidden);
  });

  it('misses nothing that is put aboard at the same moment, of a vessel entered at the same moment too', async () => {
    const { ctx, owed, sound } = await aFleetWithHoses();
    const entered = Array.from({ length: 8 }, async (_, at) => {
      const vessel = accepted(await createVessel(ctx, particulars(`New ${at}`)));
      const blank = { zone: null, quantity: 1, model: null, attributes: {} };
      const plate = { maker: 'Quillmere Hose Works', serialNumber: `AB13${10 + at}` };
      return accepted(await addItem(ctx, { ...blank, ...plate, vesselId: vessel.id, kind: 'gas_hose', label: 'Hose' }));
    });
    await Promise.all([...entered, aNotice(ctx)]);
    expect(await owed()).toHaveLength(10);
    await sound();
  });
});

describe('what is written of a thing', () => {
  it('is matched in the same write: put aboard, given a number, and put right', async () => {
    const { ctx, teal, unread, within, owed, sound } = await aFleetWithHoses();
    await aNotice(ctx);
    const { item, obligations } = await anItem(ctx, teal.id, 'gas_hose', 'Second hose', hosePlate('ab-1300'));
    expect(obligations.map(({ explanation }) => explanation.notice?.match)).toContain('affected');
    const write = async (itemId: string, serialNumber: string, expectedVersion: number) =>
      accepted(await changeItem(ctx, { itemId, expectedVersion, change: { serialNumber } }));
    await write(unread, 'AB1201', 1);
    await write(within, 'AB1100', 1);
    expect(await owed()).toEqual(
      [
        [item.id, 'affected'],
        [unread, 'affected'],
      ].sort(),
    );
    await sound();
  });
});

describe('an answer', () => {
  it('ends the obligation of its thing and no other', async () => {
    const { ctx, within, unread, owed, sound } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    const { obligations, answer } = await answered(ctx, id, within);
    expect(obligations.filter(({ explanation }) => explanation.notice)).toEqual([]);
    expect(answer).toMatchObject({ noticeId: id, itemId: within, serialThen: 'AB1250' });
    expect(await owed()).toEqual([[unread, 'may_be_affected']]);
    await sound();
  });

  it('with the number read writes it on the thing', async () => {
    const { organisation, ctx, unread, owed, sound } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    await answered(ctx, id, unread, { answer: 'not_affected', serialRead: 'AB0777', evidence: null });
    const item = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => loadItem(tx, unread));
    expect(item).toMatchObject({ serialNumber: 'AB0777', version: 2 });
    expect((await owed()).map(([itemId]) => itemId)).not.toContain(unread);
    await sound();
  });

  it('of a replacement records the fact and the new number, and what was known before stays known', async () => {
    const { organisation, ctx, within, sound } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    const { obligations } = await answered(ctx, id, within, { replaced: true, serialRead: 'AC0001' });
    expect(obligations.map(({ ruleId }) => ruleId)).not.toContain(`notice:${id}`);
    const { rows } = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) =>
      sql<{
        fact: string;
        on_text: string;
        note: string;
      }>`select fact, on_text, note from fact where item_id = ${within}::uuid`.execute(tx),
    );
    expect(rows).toEqual([
      { fact: 'replaced', on_text: '2026-10-01', note: 'Answers the notice “Hoses that may come off the tail”' },
    ]);
    await sound();
  });

  it('is given by somebody who may see the vessel, and by nobody who may not', async () => {
    const { ctx, teal, within, unread } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    const narrowed = { ...ctx, vesselIds: [teal.id] };
    expect(await answerNotice(narrowed, { noticeId: id, itemId: unread, answer: done() })).toMatchObject({
      ok: false,
      failure: { kind: 'not_found' },
    });
    expect((await answerNotice(narrowed, { noticeId: id, itemId: within, answer: done() })).ok).toBe(true);
  });

  it('is written whole or not at all', async () => {
    const { organisation, ctx, within, owed } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    await state(ctx, within, { fact: 'installed', on: '2026-10-10' });
    const result = await answerNotice(ctx, {
      noticeId: id,
      itemId: within,
      answer: done({ on: '2026-11-30', replaced: true, serialRead: 'AC1' }),
    });
    expect(result).toMatchObject({ ok: false, failure: { kind: 'invalid', errors: [{ pointer: '/on' }] } });
    const item = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => loadItem(tx, within));
    expect(item?.serialNumber).toBe('AB1250');
    expect((await owed()).map(([itemId]) => itemId)).toContain(within);
  });

  it('is given once where two give it at the same time', async () => {
    const { ctx, within } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    const both = await Promise.all(
      [1, 2, 3].map(() => answerNotice(ctx, { noticeId: id, itemId: within, answer: done() })),
    );
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('can be corrected, and the thing is owed again when it is struck out', async () => {
    const { organisation, ctx, within, owed, sound } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    const { answer } = await answered(ctx, id, within);
    await answered(ctx, id, within, {
      answer: 'reopened',
      corrects: answer.id,
      note: 'the other hose',
      evidence: null,
    });
    expect((await owed()).map(([itemId]) => itemId)).toContain(within);
    const counts = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) => countAnswers(tx, [id]));
    expect(counts(id)).toEqual({ affected: 1, mayBeAffected: 1, answered: 0 });
    await sound();
  });
});

describe('withdrawing a notice', () => {
  it('ends every obligation of it, once, and takes no answer afterwards', async () => {
    const { ctx, within, owed, sound } = await aFleetWithHoses();
    const { id } = await aNotice(ctx);
    const withdraw = () => withdrawNotice(ctx, { noticeId: id, expectedVersion: 1, reason: 'sent out in error' });
    const all = await Promise.all([withdraw(), withdraw(), withdraw()]);
    expect(all.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await owed()).toEqual([]);
    expect(await answerNotice(ctx, { noticeId: id, itemId: within, answer: done() })).toMatchObject({
      ok: false,
      failure: { kind: 'conflict' },
    });
    await sound();
  });
});

describe('recomputing', () => {
  it('finds nothing after any sequence of notices, plates, answers, replacements and withdrawals', {
    timeout: 120_000,
  }, async () => {
    const anySerial = fc.constantFrom('AB1250', 'AB1399', 'AB1400', '1250', null);
    const act = fc.oneof(
      fc.record({ act: fc.constant('enter' as const), makers: fc.constantFrom([], ['Quillmere Hose Works']) }),
      fc.record({ act: fc.constant('plate' as const), item: fc.nat(2), serial: anySerial }),
      fc.record({ act: fc.constant('answer' as const), item: fc.nat(2), replaced: fc.boolean(), serial: anySerial }),
      fc.record({ act: fc.constant('replace' as const), item: fc.nat(2) }),
      fc.record({ act: fc.constant('withdraw' as const) }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 4, maxLength: 12 }), async (acts) => {
        const { ctx, within, unread, outside, sound } = await aFleetWithHoses();
        const ids = [within, unread, outside];
        const notices = [(await aNotice(ctx)).id];
        for (const each of acts) {
          const itemId = 'item' in each ? (ids[each.item] ?? '') : '';
          const noticeId = notices.at(-1) ?? '';
          if (each.act === 'enter') notices.push((await aNotice(ctx, { makers: each.makers })).id);
          if (each.act === 'replace') await state(ctx, itemId, { fact: 'replaced', on: '2026-11-01' });
          if (each.act === 'withdraw') await withdrawNotice(ctx, { noticeId, expectedVersion: 1, reason: 'error' });
          if (each.act === 'answer')
            await answerNotice(ctx, {
              noticeId,
              itemId,
              answer: done({ replaced: each.replaced, serialRead: each.serial }),
            });
          if (each.act === 'plate') {
            const item = await inOrganisation(pools.app, ctx, (tx) => loadItem(tx, itemId));
            await changeItem(ctx, {
              itemId,
              expectedVersion: item?.version ?? 0,
              change: { serialNumber: each.serial },
            });
          }
        }
        await sound();
      }),
      { numRuns: 12, seed: 5 },
    );
  });
});
