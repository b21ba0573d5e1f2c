/**
 * `pg.json`: how the running server is reached, and who uses it. The last user to stop stops the server.
 *
 * It is there for people (`url`) and for the next start (`users`): a user whose process is gone without having stopped
 * counts no more, so a server whose users were all killed passes to whoever starts next.
 */
import fs from 'node:fs';
import { isRunning, type ProcessMark } from './process-table.ts';

/** One call of `startPostgres`. */
export type User = ProcessMark & { id: string };

export type Connection = { url: string; users: User[] };

/** Live users only. */
export function readConnection(file: string): Connection {
  const { url, users } = parse(file);
  return { url, users: users.filter(isRunning) };
}

/** Readable by us alone: the address holds the password. */
export function writeConnection(file: string, connection: Connection): void {
  const draft = `${file}.tmp`;
  fs.rmSync(draft, { force: true });
  fs.writeFileSync(draft, `${JSON.stringify(connection, null, 2)}\n`, { mode: 0o600 });
  fs.renameSync(draft, file);
}

function parse(file: string): Connection {
  try {
    const { url, users } = JSON.parse(fs.readFileSync(file, 'utf8')) as { url: unknown; users: unknown };
    return { url: String(url), users: Array.isArray(users) ? users.filter(isUser) : [] };
  } catch {
    return { url: '', users: [] }; // none, or cut short by a crash: then nobody is known to use the server
  }
}

function isUser(value: unknown): value is User {
  const user = value as Partial<User> | null;
  return typeof user?.pid === 'number' && typeof user.startedAt === 'string' && typeof user.id === 'string';
}
