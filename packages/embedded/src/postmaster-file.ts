/** `postmaster.pid` in the cluster: what the server notes about itself while it runs, and leaves behind when it is killed. */
import path from 'node:path';
import { commandLine, readOrEmpty } from './process-table.ts';

export type PostmasterNote = { pid: number; port: number; ready: boolean };

/** Line by line: pid, folder, start, port, socket folder, address, shared memory, state. `null` when there is none. */
export function readPostmasterNote(cluster: string): PostmasterNote | null {
  const [pid, , , port, , , , state = ''] = readOrEmpty(path.join(cluster, 'postmaster.pid')).split('\n');
  return Number(pid) && Number(port) ? { pid: Number(pid), port: Number(port), ready: state.trim() === 'ready' } : null;
}

/** Whether the noted process is there and is a server on this cluster, rather than whoever has its pid now. */
export function serves({ pid }: PostmasterNote, cluster: string): boolean {
  return commandLine(pid).includes(` -D ${cluster} `);
}

/**
 * PostgreSQL does not start while the noted pid is alive, even if that number belongs to something else by now. This
 * variable is how pg_ctl tells it that a pid is no server; its own check for processes left over stays in force.
 * A postgres process that does not say which folder it serves gets the benefit of the doubt.
 */
export function disownedPid(cluster: string): Record<string, string> {
  const note = readPostmasterNote(cluster);
  if (!note || process.platform === 'win32') return {}; // Windows does not tell what a process is
  const program = commandLine(note.pid);
  const mayServe = serves(note, cluster) || (program.includes('postgres') && !program.includes(' -D '));
  return mayServe ? {} : { PG_GRANDPARENT_PID: String(note.pid) };
}
