import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { workThroughRuleChanges } from '@garboard/actions/rule/work-through-rule-changes.ts';
import { recompute } from '@garboard/actions/upkeep/recompute.ts';
import { loadRuleChange } from '@garboard/db/rule/rule-changes.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { expect, it } from 'vitest';
import { databaseUrl, pools } from '../support/database.ts';
import { size } from '../support/long.ts';
import { mintOrganisation, NOW } from '../support/organisation.ts';
import { anOwnRule } from '../support/own-rules.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';

const VESSELS = size(60, 400);
const WORKER = new URL('../support/rule-change-worker.ts', import.meta.url).pathname;

it('a rule change killed in the middle goes on where it was, and ends as if worked out from scratch', async () => {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  for (let nth = 0; nth < VESSELS; nth++) {
    const vessel = await aVessel(ctx, [], `Teal ${nth}`);
    const { item } = await anItem(ctx, vessel.id, 'gas_hose');
    await anItem(ctx, vessel.id, 'gas_hose');
    await state(ctx, item.id, { fact: 'installed', on: `2026-0${1 + (nth % 9)}-15` });
  }
  const rule = await anOwnRule(ctx);
  const change = () =>
    inOrganisation(pools.app, wholeFleet(organisation.id), (tx) =>
      loadRuleChange(tx, rule.versions[0]?.changeId ?? ''),
    );

  const worker = spawn(process.execPath, [WORKER, databaseUrl, organisation.id, NOW.toISOString()], {
    stdio: 'ignore',
  });
  const ended = once(worker, 'exit');
  while (((await change())?.itemsDone ?? 0) === 0 && worker.exitCode === null);
  worker.kill('SIGKILL');
  await ended;

  const killed = await change();
  expect(killed?.finishedAt).toBeNull();
  expect(killed?.itemsDone).toBeGreaterThan(0);
  expect(killed?.itemsDone).toBeLessThan(2 * VESSELS);
  expect(await workThroughRuleChanges(pools.app, organisation.id, NOW)).toEqual({ begun: 0, finished: 1 });
  expect(await change()).toMatchObject({ itemsDone: 2 * VESSELS, obligationsChanged: 2 * VESSELS });
  expect(await recompute(pools.app, organisation.id)).toEqual({
    vessels: VESSELS,
    obligations: 0,
    findings: 0,
    days: 0,
    unconfirmed: 0,
  });
}, 300_000);
