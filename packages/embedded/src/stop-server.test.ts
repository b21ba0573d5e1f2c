import fs from 'node:fs';
import pg from 'pg';
import { afterAll, expect, test, vi } from 'vitest';
import { isRunning } from './process-table.ts';
import { startPostgres } from './start-postgres.ts';
import { stopServer } from './stop-server.ts';
import { newFolder, QUICK, runningPostmaster } from './test-support/data-folders.ts';

vi.setConfig({ testTimeout: 60_000 });

const dataDir = newFolder(0o755, afterAll);

test('a server that a fast shutdown does not end is ended by force', async () => {
  const lines: string[] = [];
  const server = await startPostgres({ dataDir, ...QUICK, log: (line) => lines.push(line) });
  await streamWithoutConfirming(server.url); // a fast shutdown waits for a standby to confirm what it got
  const running = runningPostmaster(dataDir);
  await stopServer(running, 1000);
  expect(isRunning(running)).toBe(false);
  expect(lines.join('\n')).toMatch(/received fast shutdown request.*received immediate shutdown request/s);
  await server.stop();
});

test('a session in a transaction does not hold up a stop', async () => {
  const server = await startPostgres({ dataDir, ...QUICK });
  const errors: string[] = [];
  const client = new pg.Client({ connectionString: server.url });
  client.on('error', (error) => errors.push(error.message));
  await client.connect();
  await client.query('begin; create table boat ()');
  await server.stop();
  await expect.poll(() => errors.join()).toMatch(/terminating connection due to administrator command/);
});

test('a server whose folder was deleted under it is stopped all the same', async () => {
  const server = await startPostgres({ dataDir, ...QUICK });
  const running = runningPostmaster(dataDir);
  fs.rmSync(dataDir, { recursive: true });
  await server.stop();
  expect(isRunning(running)).toBe(false);
});

async function streamWithoutConfirming(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: `${url}?replication=true` });
  client.on('error', () => {});
  await client.connect();
  const { rows } = await client.query<{ xlogpos: string }>('IDENTIFY_SYSTEM');
  client.query(`START_REPLICATION PHYSICAL ${rows[0]?.xlogpos}`).catch(() => {}); // it streams until the end
  const watcher = new pg.Client({ connectionString: url });
  await watcher.connect();
  const streaming = async () =>
    (await watcher.query("select from pg_stat_replication where state = 'streaming'")).rowCount;
  await expect.poll(streaming, { timeout: 20_000 }).toBe(1);
  await watcher.end();
}
