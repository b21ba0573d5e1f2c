/** Data folders to try things on, and a look into the server that runs on one. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import pg from 'pg';
import { onTestFinished } from 'vitest';
import { markOf, type ProcessMark } from '../process-table.ts';
import { stopServer } from '../stop-server.ts';

/** Durability is for the data of others. */
export const QUICK = { port: 0, settings: { fsync: 'off' } };

/** A new folder that goes away with the test (or, given `afterAll`, with the file), and whatever server is left on it. */
export function newFolder(mode = 0o755, whenDone: (cleanUp: () => Promise<void>) => void = onTestFinished): string {
  const folder = fs.mkdtempSync(path.join(fs.realpathSync(os.tmpdir()), 'embedded-postgres-'));
  fs.chmodSync(folder, mode);
  whenDone(async () => {
    const left = postmaster(folder);
    if (left) await stopServer(left);
    fs.rmSync(folder, { recursive: true, force: true });
  });
  return folder;
}

/** The server process on a data folder, by the server's own note. */
export function postmaster(dataDir: string): ProcessMark | null {
  const note = path.join(dataDir, 'pg', 'postmaster.pid');
  return fs.existsSync(note) ? markOf(Number.parseInt(fs.readFileSync(note, 'utf8'), 10)) : null;
}

export function runningPostmaster(dataDir: string): ProcessMark {
  const found = postmaster(dataDir);
  if (!found) throw new Error('no server runs');
  return found;
}

/** The first column of the first row, if there is one. */
export async function ask(url: string, sql: string): Promise<unknown> {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => {});
  await client.connect();
  try {
    const { rows } = await client.query({ text: sql, rowMode: 'array' });
    return rows[0]?.[0];
  } finally {
    await client.end();
  }
}

export async function until(what: string, holds: () => boolean): Promise<void> {
  for (const deadline = Date.now() + 20_000; !holds(); await sleep(5)) {
    if (Date.now() > deadline) throw new Error(`waited in vain until ${what}`);
  }
}

/** `name [skipped: reason]`, so that a report shows what was not run and why. */
export function unless(runs: boolean, reason: string, name: string): string {
  return runs ? name : `${name} [skipped: ${reason}]`;
}
