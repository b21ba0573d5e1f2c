/** Hosts the jobs: what has to happen though nobody asks. Start and stop are a pair; stop waits for a running job. */
import { PgBoss } from 'pg-boss';
import { installJobs, JOBS_SCHEMA } from './install-jobs.ts';
import type { Job, SchedulerDeps } from './job.ts';
import { workThroughChanges } from './rule/work-through-changes.job.ts';
import { checkAudits } from './upkeep/check-audit.job.ts';
import { checkStandings } from './upkeep/check-standings.job.ts';
import { forgetRunOut } from './upkeep/forget-run-out.job.ts';
import { lookAfterFiles } from './upkeep/look-after-files.job.ts';

export type Scheduler = {
  stop(): Promise<void>;
  /** Looks for changes of own rules now instead of within a minute. */
  lookAtRuleChanges(): void;
};

export const JOBS: readonly Job[] = [checkAudits, checkStandings, forgetRunOut, lookAfterFiles, workThroughChanges];

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
  const workers = new Map<string, string>();
  try {
    await boss.start();
    for (const job of JOBS) workers.set(job.name, await host(boss, job, deps));
  } catch (fault) {
    await stop();
    throw fault;
  }
  const fault = (error: Error) => deps.log({ level: 'error', message: 'scheduler', error: error.message });
  const soon = async ({ name }: Job) => {
    await boss.send(name, null);
    boss.notifyWorker(workers.get(name) ?? '');
  };
  return { stop, lookAtRuleChanges: () => void soon(workThroughChanges).catch(fault) };
}

/** Answers with the worker's name. */
async function host(boss: PgBoss, job: Job, deps: SchedulerDeps): Promise<string> {
  await boss.createQueue(job.name);
  const worker = await boss.work(job.name, { pollingIntervalSeconds: 5 }, async () => job.run(deps));
  await boss.schedule(job.name, job.cron, null, { tz: 'UTC' });
  return worker;
}
