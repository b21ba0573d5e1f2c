/** Hosts the jobs: what has to happen though nobody asks. Start and stop are a pair; stop waits for a running job. */
import { PgBoss } from 'pg-boss';
import { installJobs, JOBS_SCHEMA } from './install-jobs.ts';
import type { Job, SchedulerDeps } from './job.ts';
import { workThroughChanges } from './rule/work-through-changes.job.ts';
import { checkAudits } from './upkeep/check-audit.job.ts';
import { checkStandings } from './upkeep/check-standings.job.ts';
import { forgetRunOut } from './upkeep/forget-run-out.job.ts';

export type Scheduler = { stop(): Promise<void> };

export const JOBS: readonly Job[] = [checkAudits, checkStandings, forgetRunOut, workThroughChanges];

export async function startScheduler(deps: SchedulerDeps): Promise<Scheduler> {
  await installJobs(deps.url, deps.owner);
  const boss = new PgBoss({
    connectionString: deps.url,
    options: '-c role=garboard_app',
    schema: JOBS_SCHEMA,
    max: 2,
    migrate: false,
    createSchema: false,
    reindex: false,
  });
  boss.on('error', (error) => deps.log({ level: 'error', message: 'scheduler', error: error.message }));
  const stop = () => boss.stop({ graceful: true, timeout: 5_000 });
  try {
    await boss.start();
    for (const job of JOBS) await host(boss, job, deps);
  } catch (fault) {
    await stop();
    throw fault;
  }
  return { stop };
}

async function host(boss: PgBoss, job: Job, deps: SchedulerDeps): Promise<void> {
  await boss.createQueue(job.name);
  await boss.work(job.name, { pollingIntervalSeconds: 5 }, async () => job.run(deps));
  await boss.schedule(job.name, job.cron, null, { tz: 'UTC' });
}
