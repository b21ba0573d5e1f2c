/** The job queue's own schema, made and brought up to date by the owner; the application only uses it. */
import type { Db } from '@garboard/db/pool.ts';
import { sql } from 'kysely';
import { getConstructionPlans, getMigrationPlans } from 'pg-boss';

export const JOBS_SCHEMA = 'jobs';
const LOCK = 7_427_466_392;

/** Safe with two processes at once. */
export async function installJobs(owner: Db): Promise<void> {
  await owner.connection().execute(async (connection) => {
    await sql`select pg_advisory_lock(${LOCK})`.execute(connection);
    try {
      const plans = await plansFor(connection);
      if (plans) await sql.raw(plans).execute(connection);
      await sql.raw(GRANTS).execute(connection);
    } finally {
      await sql`select pg_advisory_unlock(${LOCK})`.execute(connection);
    }
  });
}

/** What is still to be run; empty when the schema is up to date. */
async function plansFor(connection: Db): Promise<string> {
  const { rows } = await sql<{ there: boolean }>`select to_regclass('jobs.version') is not null as there`.execute(connection);
  if (!rows[0]?.there) return getConstructionPlans(JOBS_SCHEMA);
  const version = await sql<{ version: number }>`select version from jobs.version`.execute(connection);
  return getMigrationPlans(JOBS_SCHEMA, version.rows[0]?.version ?? 0);
}

const GRANTS = `
  grant usage on schema ${JOBS_SCHEMA} to garboard_app;
  grant select, insert, update, delete on all tables in schema ${JOBS_SCHEMA} to garboard_app;
  grant execute on all functions in schema ${JOBS_SCHEMA} to garboard_app;`;
