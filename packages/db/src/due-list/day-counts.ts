/** Keeps the per-day counts and the vessel's standing row true, in the transaction of the change. */
import { sql } from 'kysely';
import { NO_DATE } from '../item/obligation-record.ts';
import type { Scoped } from '../scope.ts';

export type CountedDay = {
  readonly overdue_after: string;
  readonly due_from: string;
  readonly suspended: string;
  readonly weight: string;
};

/**
 * Adds what came and takes away what went, net: a day that lost as many as it gained is not touched.
 * A function of the database does it, because somebody who sees some vessels only moves the fleet's counts too.
 */
export async function shiftDayCounts(
  tx: Scoped,
  organisationId: string,
  gone: readonly CountedDay[],
  come: readonly CountedDay[],
): Promise<void> {
  const net = netOf(gone, come);
  if (net.length === 0) return;
  await sql`select shift_day_counts(${organisationId}::uuid, ${JSON.stringify(net)}::jsonb)`.execute(tx);
}

function netOf(gone: readonly CountedDay[], come: readonly CountedDay[]): (CountedDay & { n: number })[] {
  const net = new Map<string, CountedDay & { n: number }>();
  const add = (by: number) => (day: CountedDay) => {
    const { overdue_after, due_from, suspended, weight } = day;
    const key = `${overdue_after} ${due_from} ${suspended} ${weight}`;
    net.set(key, { overdue_after, due_from, suspended, weight, n: (net.get(key)?.n ?? 0) + by });
  };
  gone.forEach(add(-1));
  come.forEach(add(1));
  return [...net.values()].filter(({ n }) => n !== 0);
}

/** Counts the vessel's own rows again: her share, not the fleet's. What is ever suspended is no earliest: it is looked at day by day. */
export async function refreshVesselStanding(tx: Scoped, vesselId: string): Promise<void> {
  await sql`
    update vessel_standing set
      items = (select count(*) from item where vessel_id = ${vesselId}::uuid and not withdrawn),
      dated = counted.dated, undated = counted.undated, earliest_overdue_after = counted.earliest
    from (
      select count(*) filter (where overdue_after < ${NO_DATE}::date)::integer as dated,
             count(*) filter (where overdue_after = ${NO_DATE}::date)::integer as undated,
             min(overdue_after) filter (where overdue_after < ${NO_DATE}::date and suspended = '{}') as earliest
      from obligation where vessel_id = ${vesselId}::uuid
    ) counted
    where vessel_standing.vessel_id = ${vesselId}::uuid`.execute(tx);
}
