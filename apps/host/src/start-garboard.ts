/** Puts the parts together. The only place that knows them all. */
import { createApp } from '@garboard/api/app.ts';
import { openMetrics } from '@garboard/api/health/metrics.ts';
import { inspect } from '@garboard/blobs/evidence/inspect.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { startScheduler } from '@garboard/scheduler/start-scheduler.ts';
import { pino } from 'pino';
import { DASHBOARD_DIST, dashboardBuild } from './build-dashboard.ts';
import type { Config } from './config.ts';
import { seedOnFirstStart, signInLinks } from './demo.ts';
import { listen } from './listen.ts';
import { openDatabase } from './open-database.ts';
import { openFiles } from './open-files.ts';
import { nameOf, openPeople } from './people.ts';
import type { Progress } from './progress.ts';
import { VERSION } from './version.ts';

export type Garboard = { readonly address: string; stop(): Promise<void> };

/** Rejects when a part does not start or `asked` says to stop meanwhile; what had been started is stopped again. */
export async function startGarboard(config: Config, progress: Progress, asked: AbortSignal): Promise<Garboard> {
  const log = pino({ level: config.logLevel }, pino.destination({ fd: 2, sync: true }));
  const build = await dashboardBuild();
  if (build) await progress.step('Building the dashboard', build);
  const words = config.databaseUrl ? 'Opening the database' : 'Starting PostgreSQL';
  const database = await progress.step(words, () =>
    openDatabase(config, (error) => log.error({ error: error.message }, 'database')),
  );
  const files = { store: openFiles(config.files), inspect };
  const running = [() => database.close()];
  const stop = async () => {
    for (const part of running.toReversed()) await part();
  };
  try {
    if (config.demo) await seedOnFirstStart({ pools: database.pools, files }, new Date(), progress, asked);
    const { app, owner } = database.pools;
    const now = () => new Date();
    const scheduler = await startScheduler({
      url: database.url,
      owner,
      app,
      store: files.store,
      now,
      log: ({ level, message, ...rest }) => log[level](rest, message),
    });
    running.push(() => scheduler.stop());
    let listening = '';
    const onMailFault = (fault: unknown) =>
      log.error({ error: fault instanceof Error ? fault.message : String(fault) }, 'mail');
    const people = await openPeople(config, database.pools, () => listening, onMailFault);
    const metrics = metricsOf(config, database.pools);
    const api = createApp({
      ...people,
      pools: database.pools,
      files,
      now,
      log: (entry) => {
        log.info(entry);
        metrics?.counts.observe(entry);
      },
      ...(metrics && { metrics }),
      dashboardDir: DASHBOARD_DIST,
      version: VERSION,
      ...(config.contact && { contact: config.contact }),
      ...(config.rateLimits && { rateLimits: config.rateLimits }),
      corsOrigins: config.corsOrigins,
      onRuleChange: () => scheduler.lookAtRuleChanges(),
    });
    const server = await listen(api.fetch, config.port, config.host);
    listening = server.address;
    running.push(() => server.stop());
    await announce(config, database.pools, server.address, progress);
    return { address: server.address, stop };
  } catch (fault) {
    await stop();
    throw fault;
  }
}

function metricsOf({ metricsToken: token }: Config, { connections }: Pools) {
  return token === undefined ? undefined : { token, counts: openMetrics(connections) };
}

async function announce(config: Config, pools: Pools, address: string, progress: Progress): Promise<void> {
  if (config.demo) {
    for (const { name, path } of await signInLinks(pools, new Date()))
      progress.say(`Sign in to ${name}: ${nameOf(address)}${path}`);
  }
  progress.say(`Ready at ${address}`);
}
