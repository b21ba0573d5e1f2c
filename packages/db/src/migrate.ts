/** Numbered SQL migrations, forward only. Safe with two processes at once: an advisory lock lets one through at a time. */

import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { sql } from 'kysely';
import type { Db } from './pool.ts';

const FOLDER = new URL('../migrations/', import.meta.url);
const LOCK = 7_427_466_391;

export type Migration = {
  readonly number: number;
  readonly name: string;
  readonly text: string;
  readonly checksum: string;
};

/** The migrations in order; throws when a number is missing or doubled. */
export async function readMigrations(folder: URL = FOLDER): Promise<Migration[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.sql')).sort();
  return Promise.all(
    names.map(async (name, index) => {
      const number = Number(name.slice(0, 4));
      if (number !== index + 1) throw new Error(`migration ${name}: expected number ${index + 1}`);
      const text = await readFile(new URL(name, folder), 'utf8');
      return { number, name, text, checksum: createHash('sha256').update(text).digest('hex') };
    }),
  );
}

/** Applies what is not yet applied and answers with the names; throws when an applied file was changed afterwards. */
export async function migrate(owner: Db, folder: URL = FOLDER): Promise<string[]> {
  const migrations = await readMigrations(folder);
  return owner.connection().execute(async (connection) => {
    await sql`select pg_advisory_lock(${LOCK})`.execute(connection);
    try {
      await sql`create table if not exists migration (number integer primary key, name text not null, checksum text not null,
        applied_at timestamptz not null default now())`.execute(connection);
      const applied = await appliedChecksums(connection);
      const waiting = migrations.filter((migration) => isWaiting(migration, applied));
      for (const migration of waiting) await apply(connection, migration);
      return waiting.map(({ name }) => name);
    } finally {
      await sql`select pg_advisory_unlock(${LOCK})`.execute(connection);
    }
  });
}

async function appliedChecksums(connection: Db): Promise<Map<number, string>> {
  const { rows } = await sql<{ number: number; checksum: string }>`select number, checksum from migration`.execute(
    connection,
  );
  return new Map(rows.map(({ number, checksum }) => [number, checksum]));
}

function isWaiting({ number, name, checksum }: Migration, applied: Map<number, string>): boolean {
  const before = applied.get(number);
  if (before !== undefined && before !== checksum)
    throw new Error(`migration ${name} was changed after it was applied`);
  return before === undefined;
}

async function apply(connection: Db, { number, name, text, checksum }: Migration): Promise<void> {
  await connection.transaction().execute(async (tx) => {
    await sql.raw(text).execute(tx);
    await sql`insert into migration (number, name, checksum) values (${number}, ${name}, ${checksum})`.execute(tx);
  });
}
