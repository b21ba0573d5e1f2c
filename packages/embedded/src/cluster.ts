/** The cluster: the folder `pg` in which PostgreSQL keeps its data. */
import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { command, type RunAs, type ServerProgram } from './run-as.ts';
import { UnusableDataFolder } from './unusable-data-folder.ts';

/** The one role of a new cluster. */
export const SUPERUSER = 'postgres';

export type ClusterState = { kind: 'absent' } | { kind: 'present'; password: string };

const PASSWORD_FILE = 'superuser-password';
const SWEEPS = 100;
const SWEEP_PAUSE_MS = 50;

/** Looks only. Throws `UnusableDataFolder` for anything that is neither nothing nor a cluster of our own and of this version. */
export function inspectCluster(cluster: string, major: string): ClusterState {
  const found = lookAt(cluster);
  if (!found) return { kind: 'absent' };
  if (!found.isDirectory()) throw new UnusableDataFolder(cluster, 'it is not a folder.');
  refuseForeignOwner(cluster, found.uid);

  const names = fs.readdirSync(cluster);
  if (names.length === 0) return { kind: 'absent' };
  if (!names.includes('PG_VERSION')) {
    throw new UnusableDataFolder(
      cluster,
      'it holds files, but no PostgreSQL data. Name another folder, or move them away.',
    );
  }
  refuseForeignVersion(cluster, major);
  if (!names.includes(PASSWORD_FILE)) {
    throw new UnusableDataFolder(cluster, `it was made by another program (there is no ${PASSWORD_FILE} in it).`);
  }
  return { kind: 'present', password: fs.readFileSync(path.join(cluster, PASSWORD_FILE), 'utf8').trim() };
}

/**
 * Makes a new cluster and answers the password of its superuser. It is made aside and moved into place when complete,
 * password included, so that a start that is killed half way leaves nothing that looks like a cluster.
 */
export async function createCluster(cluster: string, as: RunAs, initdb: ServerProgram): Promise<string> {
  await sweepHalfMade(cluster);
  const work = fs.mkdtempSync(`${cluster}.init-`); // a name of its own: the initdb of a killed start may still be writing
  try {
    const password = writePassword(work, as);
    await runInitdb(work, as, initdb);
    moveIntoPlace(work, cluster);
    return password;
  } finally {
    fs.rmSync(work, { recursive: true, force: true });
  }
}

function lookAt(cluster: string): fs.Stats | undefined {
  try {
    return fs.statSync(cluster, { throwIfNoEntry: false });
  } catch (error) {
    throw new UnusableDataFolder(cluster, `this user may not look into it (${(error as Error).message}).`);
  }
}

function refuseForeignOwner(cluster: string, owner: number): void {
  const us = process.getuid?.() ?? 0; // Windows has no such numbers
  if (us === 0 || owner === us) return;
  throw new UnusableDataFolder(
    cluster,
    `it belongs to another user (number ${owner}; this program runs as ${us}), as when the program was started as root ` +
      `before. Start it as root or as that user again, or give the whole data folder to this user: ` +
      `chown -R ${us} ${path.dirname(cluster)}.`,
  );
}

function refuseForeignVersion(cluster: string, major: string): void {
  const version = fs.readFileSync(path.join(cluster, 'PG_VERSION'), 'utf8').trim();
  if (version === major) return;
  throw new UnusableDataFolder(
    cluster,
    `it was made by PostgreSQL ${JSON.stringify(version)}, this program brings PostgreSQL ${major}. ` +
      'Make a backup with the program that made it and restore that into a new folder.',
  );
}

/** What killed starts left. Its initdb may live on and write or clear away for a moment, so one removal may not be enough. */
async function sweepHalfMade(cluster: string): Promise<void> {
  const parent = path.dirname(cluster);
  const halfMade = () => fs.readdirSync(parent).filter((name) => name.startsWith(`${path.basename(cluster)}.init`));
  for (let left = SWEEPS; left > 0 && halfMade().length > 0; left--) {
    for (const name of halfMade()) removeWhatIsThere(path.join(parent, name));
    await sleep(SWEEP_PAUSE_MS);
  }
}

function removeWhatIsThere(folder: string): void {
  try {
    fs.rmSync(folder, { recursive: true, force: true });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOTEMPTY') throw error;
  }
}

function writePassword(work: string, as: RunAs): string {
  const password = randomBytes(24).toString('base64url');
  const file = path.join(work, PASSWORD_FILE);
  fs.writeFileSync(file, `${password}\n`, { mode: 0o600 });
  if (as.fileOwner) for (const made of [work, file]) fs.chownSync(made, as.fileOwner.uid, as.fileOwner.gid);
  return password;
}

async function runInitdb(work: string, as: RunAs, initdb: ServerProgram): Promise<void> {
  const { file, args, options } = command(as, initdb, [
    ...['-D', path.join(work, 'cluster'), '-U', SUPERUSER, `--pwfile=${path.join(work, PASSWORD_FILE)}`],
    ...['-A', 'scram-sha-256', '-E', 'UTF8', '--no-instructions'],
    // PostgreSQL's own locale: sorting does not depend on what the machine has installed
    ...['--locale-provider=builtin', '--builtin-locale=C.UTF-8', '--locale=C'],
  ]);
  const child = spawn(file, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'], detached: true });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => (output += String(chunk)));
  const [code, signal] = await once(child, 'close');
  if (code !== 0)
    throw new Error(`PostgreSQL could not make its data folder (initdb ended with ${code ?? signal}): ${output}`);
}

function moveIntoPlace(work: string, cluster: string): void {
  fs.renameSync(path.join(work, PASSWORD_FILE), path.join(work, 'cluster', PASSWORD_FILE));
  if (fs.existsSync(cluster)) fs.rmdirSync(cluster); // an empty folder that somebody made for us
  fs.renameSync(path.join(work, 'cluster'), cluster);
  if (process.platform !== 'win32') flush(path.dirname(cluster));
}

/** Else a power cut could undo the move after transactions were committed in the moved cluster. */
function flush(folder: string): void {
  const open = fs.openSync(folder, 'r');
  fs.fsyncSync(open);
  fs.closeSync(open);
}
