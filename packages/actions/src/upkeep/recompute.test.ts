import { readDueList } from '@garboard/db/due-list/read-due-list.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { parseDay } from '@garboard/domain/calendar/day.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { aFinding } from '@garboard/tests/support/findings.ts';
import { mintOrganisation, TODAY } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import fc from 'fast-check';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { recompute } from './recompute.ts';

const RIGHT = { vessels: 1, obligations: 0, findings: 0, days: 0, unconfirmed: 0 };

async function aVesselWithHose() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx, ['solas', 'bs5306']);
  const { item } = await anItem(ctx, vessel.id, 'gas_hose');
  await state(ctx, item.id, { fact: 'installed', on: '2024-05-10' });
  return { organisation, ctx, vessel, item };
}

describe('recompute', () => {
  it('finds nothing to mend after ordinary work', async () => {
    const { organisation } = await aVesselWithHose();
    expect(await recompute(pools.app, organisation.id)).toEqual(RIGHT);
  });

  it('finds and mends an obligation that somebody changed by hand', async () => {
    const { organisation } = await aVesselWithHose();
    await inOrganisation(pools.owner, wholeFleet(organisation.id), (tx) =>
      tx
        .updateTable('obligation')
        .set({ due_on: '2040-01-01', overdue_after: '2040-01-01' })
        .where('organisation_id', '=', organisation.id)
        .where('rule_id', '=', 'lpg-hose')
        .execute(),
    );
    expect((await recompute(pools.app, organisation.id)).obligations).toBe(1);
    expect((await recompute(pools.app, organisation.id)).obligations).toBe(0);
  });

  it('finds and mends a finding and its date that somebody changed by hand', async () => {
    const { organisation, ctx, vessel } = await aVesselWithHose();
    await aFinding(ctx, vessel.id);
    await aFinding(ctx, vessel.id, { urgency: 'before_use' });
    expect(await recompute(pools.app, organisation.id)).toEqual(RIGHT);
    await inOrganisation(pools.owner, wholeFleet(organisation.id), async (tx) => {
      await sql`update finding set urgency = 'observe' where urgency = 'before_use' and organisation_id = ${organisation.id}::uuid`.execute(
        tx,
      );
      await sql`update matter set overdue_after = '2040-01-01' where urgency = 'within_weeks' and organisation_id = ${organisation.id}::uuid`.execute(
        tx,
      );
    });
    expect((await recompute(pools.app, organisation.id)).findings).toBe(2);
    expect(await recompute(pools.app, organisation.id)).toEqual(RIGHT);
  });

  it('finds and mends a wrong count of a day', async () => {
    const { organisation } = await aVesselWithHose();
    await inOrganisation(pools.owner, wholeFleet(organisation.id), (tx) =>
      sql`update day_count set n = n + 3 where n > 0 and organisation_id = ${organisation.id}::uuid`.execute(tx),
    );
    expect((await recompute(pools.app, organisation.id)).days).toBeGreaterThan(0);
    expect(await recompute(pools.app, organisation.id)).toEqual(RIGHT);
  });

  it('rebuilds byte for byte what was dropped', async () => {
    const { organisation } = await aVesselWithHose();
    const read = () =>
      inOrganisation(pools.owner, wholeFleet(organisation.id), (tx) =>
        sql`select * from obligation where organisation_id = ${organisation.id}::uuid order by item_id, rule_id, duty`.execute(
          tx,
        ),
      );
    const before = (await read()).rows;
    await inOrganisation(pools.owner, wholeFleet(organisation.id), (tx) =>
      sql`delete from obligation where organisation_id = ${organisation.id}::uuid`.execute(tx),
    );
    await recompute(pools.app, organisation.id);
    expect(before.length).toBeGreaterThan(0);
    expect((await read()).rows).toEqual(before);
  });

  it('finds nothing after any sequence of statements, corrections and replacements', { timeout: 120_000 }, async () => {
    const act = fc.record({
      item: fc.nat(3),
      fact: fc.constantFrom(
        'installed',
        'manufactured',
        'serviced',
        'replaced',
        'printed_expiry',
        'withdrawn' as const,
      ),
      year: fc.integer({ min: 2005, max: 2026 }),
      month: fc.integer({ min: 1, max: 10 }),
      corrects: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 5, maxLength: 14 }), async (acts) => {
        const organisation = await mintOrganisation(pools);
        const ctx = organisation.ctx();
        const vessel = await aVessel(ctx, ['solas', 'bs5306', 'us_recreational']);
        const kinds = ['liferaft', 'hand_flare', 'portable_extinguisher_co2', 'gas_hose'];
        const items = [];
        for (const kind of kinds) items.push((await anItem(ctx, vessel.id, kind)).item.id);
        const known = new Map<string, string>();
        for (const { item, fact, year, month, corrects } of acts) {
          const itemId = items[item] ?? '';
          const on = `${year}-${String(month).padStart(2, '0')}`;
          const earlier = corrects ? (known.get(itemId) ?? null) : null;
          known.delete(itemId);
          await state(ctx, itemId, { fact, on, corrects: earlier }).then(
            ({ fact: { id } }) => known.set(itemId, id),
            (refusal: Error) => expect(refusal.message).toContain('refused'),
          );
        }
        expect(await recompute(pools.app, organisation.id)).toEqual(RIGHT);
        await expectListAgrees(organisation.id);
      }),
      { numRuns: 12, seed: 4 },
    );
  });
});

/** The list from the stored rows equals the list worked out anew, totals included. */
async function expectListAgrees(organisationId: string): Promise<void> {
  const day = parseDay(TODAY);
  if (day === null) throw new Error('no day');
  for (const standing of [undefined, 'unknown'] as const) {
    const question = { day, filter: standing ? { standing } : {}, limit: 200 };
    const stored = await inOrganisation(pools.app, wholeFleet(organisationId), (tx) => readDueList(tx, question));
    const anew = await inOrganisation(pools.app, wholeFleet(organisationId), (tx) =>
      readDueList(tx, { ...question, cut: { asOf: day } }),
    );
    expect(stored).toEqual(anew);
  }
}
