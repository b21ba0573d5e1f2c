/**
 * `pg.json`: how the running server is reached, and who uses it. The last user to stop stops the server.
 *
 * It is there for people (`url`) and for the next start (`users`): a user whose process is gone without having stopped
 * counts no more, so a server whose users were all killed passes to whoever starts next.
 */
import fs from 'node:fs';
import path from 'node:path';
import { isRunning, type ProcessMark } from './process-table.ts';

/** One call of `startPostgres`. */
export type User = ProcessMark & { id: string };

export type Connection = { url: string; cluster: string; users: User[] };

/** Live users of this cluster only: a copied folder brings the file of the original along. */
export function readConnection(file: string, cluster: string): Connection {
  const noted = parse(file);
  return { url: noted.url, cluster, users: noted.cluster === cluster ? noted.users.filter(isRunning) : [] };
}

/** Readable by the owner of the folder alone (and root): the address holds the password. */
export function writeConnection(file: string, connection: Connection): void {
  const draft = `${file}.tmp`;
  fs.rmSync(draft, { force: true });
  fs.writeFileSync(draft, `${JSON.stringify(connection, null, 2)}\n`, { mode: 0o600 });
  const { uid, gid } = fs.statSync(path.dirname(file));
  if (process.getuid?.() === 0) fs.chownSync(draft, uid, gid); // root may join a server that a user started
  fs.renameSync(draft, file);
}

function parse(file: string): Connection {
  try {
    const noted = JSON.parse(fs.readFileSync(file, 'utf8')) as Record<keyof Connection, unknown>;
    const users = Array.isArray(noted.users) ? noted.users.filter(isUser) : [];
    return { url: String(noted.url), cluster: String(noted.cluster), users };
  } catch {
    return { url: '', cluster: '', users: [] }; // none, or cut short by a crash: then nobody is known to use the server
  }
}

function isUser(value: unknown): value is User {
  const user = value as Partial<User> | null;
  return typeof user?.pid === 'number' && typeof user.startedAt === 'string' && typeof user.id === 'string';
}
