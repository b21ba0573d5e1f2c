/** The embedded PostgreSQL in a folder of its own, without the patience of a real disk. */
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startPostgres } from '@garboard/embedded/start-postgres.ts';
import type { RunningServer } from './running-server.ts';

const PREFIX = 'garboard-test-';
/** Nothing here outlives the run, so nothing need survive a power cut. */
const SETTINGS = { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off', max_connections: '100' };

export async function startEmbedded(): Promise<RunningServer> {
  await sweep();
  const dataDir = mkdtempSync(path.join(tmpdir(), `${PREFIX}${process.pid}-`));
  const server = await startPostgres({ dataDir, port: 0, settings: SETTINGS });
  const stop = async () => {
    await server.stop();
    rmSync(dataDir, { recursive: true, force: true });
  };
  return { words: 'the embedded server', url: server.url, stop };
}

/** What a killed run left behind: a folder named after a process that is gone, perhaps with its server still running. */
async function sweep(): Promise<void> {
  const left = readdirSync(tmpdir()).filter((name) => name.startsWith(PREFIX) && !isRunning(pidIn(name)));
  for (const name of left)
    await remove(path.join(tmpdir(), name)).catch((error) => console.log(`${name} stays: ${error}`));
}

async function remove(dataDir: string): Promise<void> {
  if (existsSync(path.join(dataDir, 'pg.json'))) await (await startPostgres({ dataDir, port: 0 })).stop();
  rmSync(dataDir, { recursive: true, force: true });
}

const pidIn = (name: string) => Number.parseInt(name.slice(PREFIX.length), 10);

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
