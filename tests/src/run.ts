/** `npm test` and `npm run test:long`: chooses a database and a browser, says which, runs the tests, counts. */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createVitest, type Vitest } from 'vitest/node';
import { startDatabaseServer } from './harness/database-server.ts';
import { collectFigures } from './harness/figures.ts';
import { writeLongRun } from './harness/long-run.ts';
import { countTests, inWords, type Tally } from './harness/tally.ts';
import { createMigratedDatabase, serverVersion } from './harness/test-database.ts';
import { findBrowser } from './support/browser-program.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const CONFIG = 'infra/vitest/vitest.config.ts';
/** Undone in reverse when the run ends, however it ends. */
const undo: (() => Promise<void>)[] = [];
/** What is half done and can only be undone when it is done. */
let underWay: Promise<unknown> = Promise.resolve();

const { values, positionals: filters } = parseArgs({
  options: { long: { type: 'boolean', default: false }, name: { type: 'string', short: 't' } },
  allowPositionals: true,
});

async function main(): Promise<Tally> {
  const start = performance.now();
  if (values.long) process.env.LONG = '1';
  const figuresSoFar = collectFigures();
  const named = values.name === undefined ? {} : { testNamePattern: values.name };
  const vitest = await createVitest({ root: ROOT, config: CONFIG, run: true, watch: false, ...named });
  takeSignals();
  const projects = new Set((await vitest.globTestSpecifications(filters)).map(({ project }) => project.name));
  const database = projects.has('database') || projects.has('browser') ? await begin(prepareDatabase(vitest)) : 'none';
  const browser = projects.has('browser') ? (await findBrowser()).words : 'none';
  console.log(`Database: ${database}\nBrowser:  ${browser}`);

  const { testModules, unhandledErrors } = await vitest.start(filters);
  await vitest.close();
  const tally = countTests(testModules, unhandledErrors);
  const figures = figuresSoFar();
  for (const { name, value } of figures) console.log(`${name}: ${value}`);
  const minutes = (performance.now() - start) / 60_000;
  if (values.long && filters.length === 0)
    writeLongRun({ result: inWords(tally), minutes, database, browser }, figures);
  return tally;
}

async function prepareDatabase(vitest: Vitest): Promise<string> {
  const server = await startDatabaseServer();
  undo.push(server.stop);
  const database = await createMigratedDatabase(server.url);
  undo.push(database.drop);
  vitest.provide('serverUrl', server.url);
  vitest.provide('databaseUrl', database.url);
  return `PostgreSQL ${await serverVersion(server.url)}, ${server.words}`;
}

function begin<T>(work: Promise<T>): Promise<T> {
  underWay = work;
  return work;
}

let tidied: Promise<void> | undefined;
/** Once, whoever asks: a signal may come while the run ends by itself. */
function tidyUp(): Promise<void> {
  tidied ??= undoAll();
  return tidied;
}

async function undoAll(): Promise<void> {
  await Promise.allSettled([underWay]);
  for (const step of undo.reverse()) await step().catch((error) => console.error(error));
}

/**
 * From vitest, which would leave at once and leave the server running. npm passes on what the whole group got already,
 * so a second signal counts only a moment later: then somebody does not want to wait.
 */
function takeSignals(): void {
  let first: number | undefined;
  const onSignal = () => {
    if (first === undefined) void tidyUp().finally(() => process.exit(130));
    else if (performance.now() - first > 1000) process.exit(130);
    first ??= performance.now();
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.removeAllListeners(signal);
    process.on(signal, onSignal);
  }
}

try {
  const tally = await main();
  await tidyUp();
  console.log(inWords(tally));
  process.exit(tally.failed > 0 || tally.passed === 0 ? 1 : 0);
} catch (error) {
  console.error(error);
  await tidyUp();
  console.log('0 passed, 1 failed');
  process.exit(1);
}
