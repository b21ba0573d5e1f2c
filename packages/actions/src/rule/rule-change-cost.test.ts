/** A change costs what it changes: measured by which rows the database says were written. */
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { reportFigure, size } from '@garboard/tests/support/long.ts';
import { accepted, mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { anOwnRule, aVersion } from '@garboard/tests/support/own-rules.ts';
import { aVessel, state } from '@garboard/tests/support/vessels.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { addItems } from '../item/add-items.ts';
import { recompute } from '../upkeep/recompute.ts';
import { workThroughRuleChanges } from './work-through-rule-changes.ts';

const VESSELS = size(8, 150);
const HOSES = 30;
const OTHERS = 30;
const PLAIN = { zone: null, quantity: 1, maker: null, model: null, serialNumber: null, attributes: {} };

/** More hoses aboard the first vessel than one batch takes; every third with a day to count from. */
async function aFleet() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vesselIds = [];
  for (let nth = 0; nth < VESSELS; nth++) {
    const vessel = await aVessel(ctx, ['solas'], `Teal ${nth}`);
    vesselIds.push(vessel.id);
    for (let more = 0; more < (nth === 0 ? 8 : 1); more++) {
      const items = Array.from({ length: HOSES + OTHERS }, (_, at) => ({
        ...PLAIN,
        kind: at < HOSES ? 'gas_hose' : 'hand_flare',
        label: `Thing ${at}`,
      }));
      const added = accepted(await addItems(ctx, { vesselId: vessel.id, items }));
      for (const { id } of added.slice(0, HOSES).filter((_, at) => at % 3 === 0))
        await state(ctx, id, { fact: 'installed', on: `2026-0${1 + (nth % 9)}-15` });
    }
  }
  return { organisation, ctx, vesselIds };
}

type Row = { key: string; written: string; content: string };

const rowsOf = (organisationId: string) =>
  inOrganisation(pools.app, wholeFleet(organisationId), async (tx) => {
    const { rows } = await sql<Row>`
      select concat_ws(' ', item_id, rule_id, duty) as key, xmin::text as written, md5(o::text) as content
      from obligation o`.execute(tx);
    return new Map(rows.map((row) => [row.key, row]));
  });

async function measured(organisationId: string, change: () => Promise<unknown>) {
  const before = await rowsOf(organisationId);
  await change();
  const after = await rowsOf(organisationId);
  const differs = (part: 'written' | 'content') =>
    [...after.values()].filter((row) => before.get(row.key)?.[part] !== row[part]).length;
  const gone = [...before.keys()].filter((key) => !after.has(key)).length;
  return { all: before.size, written: differs('written') + gone, changed: differs('content') + gone };
}

describe('a change of one rule', () => {
  it('writes the rows that change and no others, and what is stored equals what is worked out anew', async () => {
    const { organisation, ctx, vesselIds } = await aFleet();
    const rule = await anOwnRule(ctx);
    const through = () => workThroughRuleChanges(pools.app, organisation.id, ctx.now);
    const hoses = HOSES * (VESSELS + 7);

    const first = await measured(organisation.id, through);
    expect(first.changed).toBe(hoses);
    const half = { vessels: { which: 'chosen', vesselIds: vesselIds.slice(0, VESSELS / 2) } } as const;
    const second = await aVersion(ctx, rule, half, '2026-03-01');
    const fewer = await measured(organisation.id, through);
    expect(fewer.changed).toBe((HOSES * VESSELS) / 2);
    await aVersion(ctx, second, half, '2026-03-01');
    const same = await measured(organisation.id, through);
    expect(same).toMatchObject({ written: 0, changed: 0 });

    for (const { all, written, changed } of [first, fewer]) {
      expect(written).toBeLessThanOrEqual(changed * 1.02);
      expect(written).toBeLessThan(all);
    }
    expect(await recompute(pools.app, organisation.id)).toMatchObject({ obligations: 0, findings: 0, days: 0 });
    reportFigure(
      'rows written for each row that a change of one own rule changes',
      `${((first.written + fewer.written) / (first.changed + fewer.changed)).toFixed(3)} (${first.changed} of ${first.all + first.changed} rows)`,
    );
  }, 600_000);
});
