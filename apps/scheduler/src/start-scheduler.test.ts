import { migrate } from '@garboard/db/migrate.ts';
import { openPools } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { freshDatabase } from '@garboard/tests/support/database.ts';
import { mintOrganisation, NOW } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { sql } from 'kysely';
import { describe, expect, it, onTestFinished } from 'vitest';
import { files } from '../../../tests/src/support/files.ts';
import type { SchedulerDeps } from './job.ts';
import { JOBS, startScheduler } from './start-scheduler.ts';
import { checkAudits } from './upkeep/check-audit.job.ts';
import { checkStandings } from './upkeep/check-standings.job.ts';
import { forgetRunOut } from './upkeep/forget-run-out.job.ts';

type Entry = Parameters<SchedulerDeps['log']>[0];

async function aHost() {
  const database = await freshDatabase();
  const pools = openPools({ url: database.url });
  onTestFinished(() => pools.close());
  await migrate(pools.owner);
  const entries: Entry[] = [];
  const deps: SchedulerDeps = {
    url: database.url,
    ...pools,
    store: files.store,
    now: () => NOW,
    log: (entry) => void entries.push(entry),
  };
  return { pools, deps, entries };
}

async function aFleet(pools: Parameters<typeof mintOrganisation>[0]) {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx);
  const { item } = await anItem(ctx, vessel.id, 'gas_hose');
  await state(ctx, item.id, { fact: 'installed', on: '2024-05-10' });
  return organisation;
}

describe('the scheduler', () => {
  it('starts on an empty database, stops, and starts again on what it left', async () => {
    const { deps, pools, entries } = await aHost();
    await (await startScheduler(deps)).stop();
    await (await startScheduler(deps)).stop();

    const { rows } = await sql<{
      name: string;
      cron: string;
    }>`select name, cron from jobs.schedule order by name`.execute(pools.owner);
    expect(rows).toEqual(JOBS.map(({ name, cron }) => ({ name, cron })));
    expect(entries.filter(({ level }) => level === 'error')).toEqual([]);
  });

  it('does its work as the application, which may not change the queue’s tables', async () => {
    const { deps, pools } = await aHost();
    await (await startScheduler(deps)).stop();
    await expect(sql`create table jobs.mine (n integer)`.execute(pools.app)).rejects.toThrow('permission denied');
  });

  it('runs a job that is sent to it', async () => {
    const { deps, pools, entries } = await aHost();
    await aFleet(pools);
    const scheduler = await startScheduler(deps);
    await sql`insert into jobs.job (name, data) values (${checkStandings.name}, '{}')`.execute(pools.owner);
    await expect
      .poll(() => entries.map(({ message }) => message), { timeout: 20_000 })
      .toContain('standings are right');
    await scheduler.stop();
  });
});

describe('the nightly check', () => {
  it('alarms once about what somebody changed by hand, and mends it', async () => {
    const { deps, pools, entries } = await aHost();
    const { id } = await aFleet(pools);
    await inOrganisation(pools.owner, wholeFleet(id), (tx) =>
      tx.updateTable('obligation').set({ action_words: 'Nothing' }).where('rule_id', '=', 'lpg-hose').execute(),
    );

    await checkStandings.run(deps);
    await checkStandings.run(deps);
    expect(entries.map(({ level, obligations }) => [level, obligations])).toEqual([
      ['error', 1],
      ['info', 0],
    ]);
  });
});

describe('the nightly walk along the audit', () => {
  it('logs the head to be kept, and alarms with the first row that is not what it was', async () => {
    const { deps, pools, entries } = await aHost();
    const { id } = await aFleet(pools);

    await checkAudits.run(deps);
    await inOrganisation(pools.owner, wholeFleet(id), (tx) =>
      sql`update audit set actor = 'x:x' where organisation_id = ${id} and sequence = 2`.execute(tx),
    );
    await checkAudits.run(deps);

    expect(entries).toMatchObject([
      { level: 'info', head: expect.stringMatching(/^\d+:[0-9a-f]{64}$/) },
      { level: 'error', broken: { at: 2, what: 'changed' } },
    ]);
  });
});

describe('the hourly forgetting', () => {
  it('drops keys after a week and sessions that ended, and nothing else', async () => {
    const { deps, pools } = await aHost();
    const organisation = await mintOrganisation(pools);
    const at = (days: number) => new Date(NOW.getTime() - days * 86_400_000);
    for (const [key, days] of [
      ['old', 8],
      ['young', 6],
    ] as const) {
      const ctx = organisation.ctx('owner', at(days));
      await aVessel({ ...ctx, once: { key, fingerprint: Buffer.from(key) } });
    }
    await forgetRunOut.run(deps);
    const kept = await inOrganisation(pools.app, wholeFleet(organisation.id), (tx) =>
      tx.selectFrom('idempotency').select('key').execute(),
    );
    expect(kept).toEqual([{ key: 'young' }]);
  });
});
