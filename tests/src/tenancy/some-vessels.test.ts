/** Somebody who may see some vessels of an organisation: the database keeps the others from them. */
import { addItem } from '@garboard/actions/item/add-item.ts';
import { recordFact } from '@garboard/actions/item/record-fact.ts';
import { recompute } from '@garboard/actions/upkeep/recompute.ts';
import { changeVessel } from '@garboard/actions/vessel/change-vessel.ts';
import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import { recordEvent } from '@garboard/actions/vessel/record-event.ts';
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import { readDueList } from '@garboard/db/due-list/read-due-list.ts';
import { readFleet } from '@garboard/db/due-list/read-fleet.ts';
import type { Database } from '@garboard/db/schema.ts';
import { inOrganisation, type Scope, wholeFleet } from '@garboard/db/scope.ts';
import { parseDay } from '@garboard/domain/calendar/day.ts';
import { type RawBuilder, sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { pools } from '../support/database.ts';
import { mintOrganisation, particulars, TODAY } from '../support/organisation.ts';
import { anItem, anOverride, aVessel, state, statement } from '../support/vessels.ts';

const day = parseDay(TODAY) as NonNullable<ReturnType<typeof parseDay>>;
const VESSEL_BOUND = [
  'vessel',
  'situation',
  'vessel_event',
  'item',
  'fact',
  'override',
  'obligation',
  'vessel_standing',
] as const;

/** Two vessels with everything there can be aboard, and somebody who may see the first of them. */
async function twoVessels() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const [seen, hidden] = [await equipped(ctx, 'Seen'), await equipped(ctx, 'Hidden')];
  const narrow = { ...ctx, vesselIds: [seen.vessel.id] };
  return { organisation, ctx, narrow, seen, hidden };
}

async function equipped(ctx: Parameters<typeof aVessel>[0], name: string) {
  const vessel = await aVessel(ctx, ['solas'], name);
  const { item } = await anItem(ctx, vessel.id, 'gas_hose');
  await state(ctx, item.id, { fact: 'installed', on: '2020-05-10' });
  await anOverride(ctx, vessel.id);
  await recordEvent(ctx, { vesselId: vessel.id, event: 'grounding', on: '2026-01-01', planned: false, note: null });
  const ashore = { place: 'ashore', use: 'laid_up', dismantled: false, underRepair: false } as const;
  await recordSituation(ctx, { vesselId: vessel.id, from: '2026-10-01', ...ashore });
  return { vessel, item };
}

const rowsOf = (scope: Scope, table: keyof Database) =>
  inOrganisation(
    pools.app,
    scope,
    async (tx) => (await sql<object>`select * from ${sql.table(table)}`.execute(tx)).rows,
  );

describe('a scope of some vessels', () => {
  it.each(VESSEL_BOUND)('shows of %s exactly half of what the whole fleet has', async (table) => {
    const { organisation, narrow, hidden } = await twoVessels();

    const [all, some] = [await rowsOf(wholeFleet(organisation.id), table), await rowsOf(narrow, table)];

    expect(some.length).toBeGreaterThan(0);
    expect(all.length).toBe(some.length * 2);
    expect(JSON.stringify(some)).not.toContain(hidden.vessel.id);
  });

  it.each(['audit', 'day_count'] as const)('shows nothing of %s: that speaks of the whole fleet', async (table) => {
    const { organisation, narrow } = await twoVessels();

    expect((await rowsOf(wholeFleet(organisation.id), table)).length).toBeGreaterThan(0);
    expect(await rowsOf(narrow, table)).toEqual([]);
  });

  it('of no vessel shows none', async () => {
    const { narrow } = await twoVessels();

    expect(await rowsOf({ ...narrow, vesselIds: [] }, 'vessel')).toEqual([]);
  });

  it('that is missing or empty is an error, never all vessels', async () => {
    const { id } = await mintOrganisation(pools);
    const bare = (vessels: RawBuilder<unknown>) =>
      pools.app.transaction().execute(async (tx) => {
        await sql`select set_config('app.organisation', ${id}, true), ${vessels}`.execute(tx);
        await sql`insert into vessel (organisation_id, id, name, time_zone, created_at)
          values (${id}::uuid, gen_random_uuid(), 'x', 'UTC', now())`.execute(tx);
      });

    await expect(bare(sql`1`)).rejects.toThrow(/malformed array literal|unrecognized configuration parameter/);
    await expect(bare(sql`set_config('app.vessels', '', true)`)).rejects.toThrow('malformed array literal');
    await expect(bare(sql`set_config('app.vessels', 'all', true)`)).resolves.toBeUndefined();
  });

  it('counts and lists what is due on those vessels and no others, stored and worked out anew alike', async () => {
    const { ctx, narrow } = await twoVessels();
    const ask = (scope: Scope, cut = {}) =>
      inOrganisation(pools.app, scope, (tx) => readDueList(tx, { day, filter: {}, limit: 50, ...cut }));

    const [all, some, anew] = [await ask(ctx), await ask(narrow), await ask(narrow, { cut: { asOf: day } })];

    expect([all.vesselsOverdue, some.vesselsOverdue, all.rows.length, some.rows.length]).toEqual([2, 1, 2, 1]);
    expect(some.rows.map(({ vessel }) => vessel.name)).toEqual(['Seen']);
    expect(some.counts).toEqual(anew.counts);
    expect(all.counts).not.toEqual(some.counts);
  });

  it('has a fleet of those vessels', async () => {
    const { narrow } = await twoVessels();

    const { rows } = await inOrganisation(pools.app, narrow, (tx) => readFleet(tx, { day, limit: 50 }));

    expect(rows.map(({ vessel }) => vessel.name)).toEqual(['Seen']);
  });
});

describe('somebody with some vessels', () => {
  it('changes those, and the whole fleet’s counts stay true', async () => {
    const { organisation, narrow, seen } = await twoVessels();

    await state(narrow, seen.item.id, { fact: 'replaced', on: '2026-05-10' });
    await anItem(narrow, seen.vessel.id, 'liferaft');

    expect(await recompute(pools.app, organisation.id)).toEqual({
      vessels: 2,
      obligations: 0,
      findings: 0,
      days: 0,
      unconfirmed: 0,
    });
  });

  it('finds no other vessel to change', async () => {
    const { narrow, hidden } = await twoVessels();
    const item = { zone: null, quantity: 1, maker: null, model: null, serialNumber: null, attributes: {} };
    const attempts = [
      changeVessel(narrow, { vesselId: hidden.vessel.id, expectedVersion: 1, change: { name: 'Mine' } }),
      addItem(narrow, { ...item, vesselId: hidden.vessel.id, kind: 'liferaft', label: 'raft' }),
      recordFact(narrow, { itemId: hidden.item.id, fact: statement({ fact: 'inspected', on: '2026-05-10' }) }),
    ];

    for (const attempt of attempts) expect(await attempt).toEqual({ ok: false, failure: { kind: 'not_found' } });
  });

  it('puts no vessel on the register: they could not see her', async () => {
    const { narrow } = await twoVessels();

    expect(await createVessel(narrow, particulars())).toEqual({ ok: false, failure: { kind: 'forbidden' } });
  });

  it('is refused by the database where a statement forgets whose the vessel is', async () => {
    const { organisation, narrow, hidden } = await twoVessels();
    const situation = sql`insert into situation (organisation_id, id, vessel_id, starts_on, place, use, dismantled, under_repair, recorded_at)
      values (${organisation.id}::uuid, gen_random_uuid(), ${hidden.vessel.id}::uuid, '2026-01-01', 'afloat', 'laid_up', false, false, now())`;
    const fact = sql`insert into fact (organisation_id, id, item_id, fact, on_text, outcome, evidence, recorded_at, recorded_by)
      values (${organisation.id}::uuid, gen_random_uuid(), ${hidden.item.id}::uuid, 'inspected', '2026', 'passed', 'record', now(), 'x')`;

    for (const insert of [situation, fact])
      await expect(inOrganisation(pools.app, narrow, (tx) => insert.execute(tx))).rejects.toThrow('row-level security');
    const { numAffectedRows } = await inOrganisation(pools.app, narrow, (tx) =>
      sql`update item set label = 'x'`.execute(tx),
    );
    expect(numAffectedRows).toBe(1n);
  });
});
