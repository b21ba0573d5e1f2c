import pg from 'pg';
import { afterAll, expect, test, vi } from 'vitest';
import { isRunning } from './process-table.ts';
import { stopServer } from './server.ts';
import { startPostgres } from './start-postgres.ts';
import { newFolder, QUICK, runningPostmaster } from './test-support/data-folders.ts';

vi.setConfig({ testTimeout: 30_000 });

const dataDir = newFolder(0o755, afterAll);

test('a server that a fast shutdown does not end is ended by force', async () => {
  const server = await startPostgres({ dataDir, ...QUICK });
  await streamWithoutConfirming(server.url); // a fast shutdown waits for a standby to confirm what it got
  const running = runningPostmaster(dataDir);
  const started = Date.now();
  await stopServer(running, 400);
  expect(isRunning(running)).toBe(false);
  expect(Date.now() - started).toBeGreaterThanOrEqual(400);
  await server.stop();
});

test('a session in a transaction does not hold up a stop', async () => {
  const server = await startPostgres({ dataDir, ...QUICK });
  const errors: string[] = [];
  const client = new pg.Client({ connectionString: server.url });
  client.on('error', (error) => errors.push(error.message));
  await client.connect();
  await client.query('begin; create table boat ()');
  const started = Date.now();
  await server.stop();
  expect(Date.now() - started).toBeLessThan(2000);
  expect(errors.join()).toMatch(/terminating connection due to administrator command/);
});

async function streamWithoutConfirming(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: `${url}?replication=true` });
  client.on('error', () => {});
  await client.connect();
  const { rows } = await client.query<{ xlogpos: string }>('IDENTIFY_SYSTEM');
  client.query(`START_REPLICATION PHYSICAL ${rows[0]?.xlogpos}`).catch(() => {}); // it streams until the end
}
