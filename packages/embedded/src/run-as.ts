/**
 * As whom the server runs.
 *
 * PostgreSQL refuses to run as root. Started as root, it therefore becomes another user, in the first of these ways
 * that works:
 * - `drop`: change the user, nothing else. Enough where that user can reach the programs and the data folder.
 * - `setpriv`: change the user but keep the right to pass closed folders (below /root, or an installation made with a
 *   tight umask). Without `no_setuid_fixup` access(2) answers without that right and PostgreSQL gives up.
 * - `unshare`: stay root outside, be somebody else inside a user namespace. Files then belong to root.
 */
import { type SpawnOptions, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

type Account = { uid: number; gid: number };

export type RunAs = {
  prefix: string[];
  spawnAs: Account | null;
  /** To whom new files of the cluster must belong; `null`: to whoever makes them. */
  fileOwner: Account | null;
};

export type ServerProgram = { file: string; libraryPath: string | null };

const CAPABILITIES = '+dac_read_search'; // read and pass anything; write only what is the user's own
const OURSELVES: RunAs = { prefix: [], spawnAs: null, fileOwner: null };
const UNSHARE: RunAs = { ...OURSELVES, prefix: ['unshare', '--user', '--map-user=1000', '--map-group=1000'] };

/** `cluster` is the cluster's folder, `exists` whether there is a cluster in it already (then its owner decides). */
export function chooseRunAs(cluster: string, exists: boolean, postgres: ServerProgram): RunAs {
  const tries = (exists ? waysFor(cluster) : waysForNew(cluster)).map((way) => ({ way, ...tryOut(way, postgres) }));
  const found = tries.find(({ works }) => works);
  if (found) return found.way;
  throw new Error(
    `PostgreSQL cannot run here: ${[...new Set(tries.map(({ why }) => why))].join('; ')}. ` +
      'Use a PostgreSQL server of your own, or, if this is root, start as a normal user.',
  );
}

export function command(as: RunAs, program: ServerProgram, args: string[], env: Record<string, string> = {}) {
  const [file = program.file, ...rest] = [...as.prefix, program.file, ...args];
  const options = { ...as.spawnAs, env: { ...environment(program.libraryPath), ...env } } satisfies SpawnOptions;
  return { file, args: rest, options };
}

function waysFor(cluster: string): RunAs[] {
  if (!isRoot()) return [OURSELVES];
  const { uid, gid } = fs.statSync(cluster);
  return uid === 0 ? [UNSHARE] : waysAs({ uid, gid }, cluster);
}

function waysForNew(cluster: string): RunAs[] {
  return isRoot() ? [...waysAs(unprivilegedAccount(), cluster), UNSHARE] : [OURSELVES];
}

function waysAs(account: Account, cluster: string): RunAs[] {
  const { uid, gid } = account;
  const drop: RunAs = { prefix: [], spawnAs: account, fileOwner: account };
  const setpriv: RunAs = {
    prefix: [
      ...['setpriv', '--securebits=+no_setuid_fixup', `--reuid=${uid}`, `--regid=${gid}`, '--clear-groups'],
      ...[`--inh-caps=${CAPABILITIES}`, `--ambient-caps=${CAPABILITIES}`],
    ],
    spawnAs: null,
    fileOwner: account,
  };
  return canReach(account, path.dirname(cluster)) ? [drop, setpriv] : [setpriv];
}

/** Whether it starts at all: also tells a missing setpriv, a refused namespace and a C library that does not fit. */
function tryOut(way: RunAs, postgres: ServerProgram): { works: boolean; why: string } {
  const { file, args, options } = command(way, postgres, ['--version']);
  const { status, error, stderr } = spawnSync(file, args, { ...options, encoding: 'utf8' });
  return { works: status === 0, why: error ? error.message : `${file}: ${stderr.trim()}` };
}

function isRoot(): boolean {
  return process.getuid?.() === 0;
}

function unprivilegedAccount(): Account {
  const accounts = fs
    .readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'));
  for (const wanted of ['nobody', 'postgres', 'daemon']) {
    const [, , uid, gid] = accounts.find(([name]) => name === wanted) ?? [];
    if (Number(uid) > 0 && Number(gid) > 0) return { uid: Number(uid), gid: Number(gid) };
  }
  throw new Error('PostgreSQL refuses to run as root and this machine has no user "nobody": start as a normal user.');
}

function canReach({ uid, gid }: Account, folder: string): boolean {
  const { uid: owner, gid: group, mode } = fs.statSync(folder);
  const mayPass = owner === uid ? 0o100 : group === gid ? 0o010 : 0o001;
  const parent = path.dirname(folder);
  return (mode & mayPass) !== 0 && (parent === folder || canReach({ uid, gid }, parent));
}

/** Nothing of our own environment is handed on: PG… variables would steer the server, and secrets are none of its business. */
function environment(libraryPath: string | null): Record<string, string> {
  const libraries = process.platform === 'darwin' ? 'DYLD_LIBRARY_PATH' : 'LD_LIBRARY_PATH';
  return {
    LC_ALL: 'C',
    TZ: 'UTC',
    PATH: '/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin',
    ...(libraryPath === null ? {} : { [libraries]: libraryPath }),
  };
}
