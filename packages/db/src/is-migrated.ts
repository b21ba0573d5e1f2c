/** Whether the database is on the version that this program needs. */
import { sql } from 'kysely';
import { readMigrations } from './migrate.ts';
import type { Db } from './pool.ts';

export async function isMigrated(owner: Db): Promise<boolean> {
  const needed = await readMigrations();
  const { rows } = await sql<{ number: number }>`select number from migration`.execute(owner);
  const applied = new Set(rows.map(({ number }) => number));
  return needed.every(({ number }) => applied.has(number));
}
