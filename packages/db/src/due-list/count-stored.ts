/**
 * A fleet's totals on a day, from the counts kept per day: cost grows with days, not with items.
 *
 * Those counts are the whole fleet's, so a scope of some vessels cannot read them: its own obligations are
 * counted instead. The second half of the union runs in such a scope only.
 */
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { LEAD_DAYS, type Standing } from '@garboard/domain/due-list/standing.ts';
import type { Weight } from '@garboard/domain/rule/scheme.ts';
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';
import type { Totals } from './due-entry.ts';
import { countUp } from './totals.ts';

export async function countStored(tx: Scoped, day: Day): Promise<Totals> {
  const on = formatDay(day);
  const { rows } = await sql<{ standing: Standing; weight: Weight; n: number; vessels: number }>`
    with day as (
      select overdue_after, due_on, weight, n from day_count
      union all
      select overdue_after, due_on, weight, count(*) from obligation
       where current_setting('app.vessels') <> 'all' group by 1, 2, 3
    ), counted as materialized (
      select case
          when overdue_after = 'infinity' then 'unknown'
          when overdue_after < ${on}::date then 'overdue'
          when due_on <= ${on}::date + ${sql.lit(LEAD_DAYS)} then 'due'
          else 'in_date'
        end as standing, weight, sum(n)::integer as n
      from day group by 1, 2
    ), late as materialized (
      select count(*)::integer as vessels from vessel_standing where earliest_overdue_after < ${on}::date
    )
    select standing, weight, n, vessels from late left join counted on true`.execute(tx);
  return { counts: countUp(rows.filter(({ n }) => n !== null)), vesselsOverdue: rows[0]?.vessels ?? 0 };
}
