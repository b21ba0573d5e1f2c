/**
 * One process at a time starts, joins or stops the server of a data folder.
 *
 * A lock file that holds a pid goes stale when its holder is killed, and two waiters that both clear it away can both
 * believe they hold it. Here the operating system holds the lock and lets go the moment the process is gone, however
 * it went. Node has no file locks of its own; SQLite, which comes with Node, takes one for us on every platform.
 */
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as sleep } from 'node:timers/promises';

const BUSY = 5; // SQLITE_BUSY
const POLL_MS = 50;

export async function withStarterLock<T>(file: string, patienceMs: number, work: () => Promise<T>): Promise<T> {
  const lock = new DatabaseSync(file);
  try {
    await take(lock, file, Date.now() + patienceMs);
    return await work();
  } finally {
    lock.close();
  }
}

async function take(lock: DatabaseSync, file: string, deadline: number): Promise<void> {
  while (!tryToTake(lock)) {
    if (Date.now() > deadline)
      throw new Error(`Another process has been starting or stopping the server for long (${file}).`);
    await sleep(POLL_MS);
  }
}

function tryToTake(lock: DatabaseSync): boolean {
  try {
    lock.exec('BEGIN EXCLUSIVE');
    return true;
  } catch (error) {
    if ((error as { errcode?: number }).errcode === BUSY) return false;
    throw error;
  }
}
