import { setTimeout as sleep } from 'node:timers/promises';
import { isRunning, type ProcessMark } from './process-table.ts';

const POLL_MS = 25;

/**
 * Fast shutdown; if that takes too long, one without farewells, from which the next start recovers; in the end by force.
 * Returns when the server is gone. On Windows, which has no such signals, the first already ends it without farewells.
 */
export async function stopServer(server: ProcessMark, patienceMs = 5000): Promise<void> {
  for (const signal of ['SIGINT', 'SIGQUIT', 'SIGKILL'] as const) {
    send(server, signal);
    for (const deadline = Date.now() + patienceMs; Date.now() < deadline; await sleep(POLL_MS)) {
      if (!isRunning(server)) return;
    }
  }
  throw new Error(`The PostgreSQL server (process ${server.pid}) does not end.`);
}

function send(server: ProcessMark, signal: NodeJS.Signals): void {
  if (!isRunning(server)) return;
  try {
    process.kill(server.pid, signal);
  } catch (error) {
    if (isRunning(server)) throw error; // else it ended between the two lines
  }
}
