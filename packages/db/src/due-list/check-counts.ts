/** Holds the per-day counts against the obligations they count. */
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';

/** Days whose count is not the number of obligations on them. */
export async function countDifferences(tx: Scoped): Promise<number> {
  const { rows } = await sql<{ differing: number }>`
    select count(*)::integer as differing
    from (select overdue_after, due_from, suspended, weight, n from day_count where n <> 0) kept
    full join (
      select overdue_after, due_from, suspended, weight, count(*)::integer as n from obligation group by 1, 2, 3, 4
    ) counted using (overdue_after, due_from, suspended, weight)
    where kept.n is distinct from counted.n`.execute(tx);
  return rows[0]?.differing ?? 0;
}

/** Counts anew. Writers of the organisation wait meanwhile. */
export async function rebuildDayCounts(tx: Scoped, organisationId: string): Promise<void> {
  await sql`select from vessel order by id for update`.execute(tx);
  await sql`delete from day_count`.execute(tx);
  await sql`
    insert into day_count (organisation_id, overdue_after, due_from, suspended, weight, n)
    select ${organisationId}::uuid, overdue_after, due_from, suspended, weight, count(*)::integer
    from obligation group by 2, 3, 4, 5`.execute(tx);
}
