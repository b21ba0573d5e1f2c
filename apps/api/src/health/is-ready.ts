/** Whether requests can be served: the database answers, and is on this program's version. */
import { isMigrated } from '@garboard/db/is-migrated.ts';
import { sql } from 'kysely';
import type { Deps } from '../deps.ts';

/** A database that does not answer by then counts as unreachable. */
const PATIENCE_MS = 2_000;

export async function isReady({ pools }: Deps): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<boolean>((resolve) => {
    timer = setTimeout(() => resolve(false), PATIENCE_MS);
  });
  try {
    return await Promise.race([check(pools), tooLate]);
  } catch {
    return false;
  } finally {
    clearTimeout(timer);
  }
}

async function check({ app, owner }: Deps['pools']): Promise<boolean> {
  await sql`select 1`.execute(app);
  return owner === undefined || isMigrated(owner);
}
