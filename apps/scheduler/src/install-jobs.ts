/** The job queue's own schema, made and brought up to date by the owner; the application only uses it. */
import type { Db } from '@garboard/db/pool.ts';
import { sql } from 'kysely';
import { PgBoss } from 'pg-boss';

export const JOBS_SCHEMA = 'jobs';

/** Safe with two processes at once: the queue takes its own lock. */
export async function installJobs(url: string, owner: Db): Promise<void> {
  const installer = new PgBoss({
    connectionString: url,
    schema: JOBS_SCHEMA,
    max: 1,
    supervise: false,
    schedule: false,
  });
  // What keeps it from starting is thrown by start(); a poll that fails while it stops is no matter.
  installer.on('error', () => {});
  await installer.start();
  await installer.stop({ graceful: false });
  await sql.raw(GRANTS).execute(owner);
}

const GRANTS = `
  grant usage on schema ${JOBS_SCHEMA} to garboard_app;
  grant select, insert, update, delete on all tables in schema ${JOBS_SCHEMA} to garboard_app;
  grant execute on all functions in schema ${JOBS_SCHEMA} to garboard_app;`;
