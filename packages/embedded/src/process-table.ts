/**
 * What the operating system knows about a process.
 *
 * A pid alone says little: it is given to somebody else after a crash or a restart of the container. So a process is
 * remembered together with the moment it started, where the system tells (Linux); elsewhere only the pid counts.
 */
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';

export type ProcessMark = { pid: number; startedAt: string };

/** The process that has this pid now, or `null` when there is none (a zombie is none). */
export function markOf(pid: number): ProcessMark | null {
  const startedAt = process.platform === 'linux' ? startOnLinux(pid) : startElsewhere(pid);
  return startedAt === null ? null : { pid, startedAt };
}

export function isRunning(mark: ProcessMark): boolean {
  return markOf(mark.pid)?.startedAt === mark.startedAt;
}

/** The command line of a process, words parted by spaces; empty when there is none or the system does not tell. */
export function commandLine(pid: number): string {
  switch (process.platform) {
    case 'linux':
      return readOrEmpty(`/proc/${pid}/cmdline`).replaceAll('\0', ' ');
    case 'win32':
      return '';
    default:
      return spawnSync('ps', ['-ww', '-o', 'args=', '-p', String(pid)], { encoding: 'utf8' }).stdout ?? '';
  }
}

function startOnLinux(pid: number): string | null {
  const stat = readOrEmpty(`/proc/${pid}/stat`);
  // the name in parentheses may itself hold spaces and parentheses, so count from the last one: proc_pid_stat(5)
  const [state, ...rest] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  if (stat === '' || state === 'Z' || state === 'X') return null;
  return `${readOrEmpty('/proc/sys/kernel/random/boot_id').trim()}/${rest[18]}`;
}

function startElsewhere(pid: number): string | null {
  try {
    process.kill(pid, 0);
    return 'not known';
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM' ? 'not known' : null;
  }
}

export function readOrEmpty(file: string): string {
  try {
    return fs.readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
