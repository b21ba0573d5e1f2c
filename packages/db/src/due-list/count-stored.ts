/**
 * A fleet's totals on a day, from the counts kept per day: cost grows with days, not with items.
 *
 * Those counts are the whole fleet's and know of weights alone, so a scope of some vessels cannot read them,
 * and what is asked of one vessel, kind or scheme is not in them: then the obligations themselves are counted.
 */
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import type { CountedAs } from '@garboard/domain/due-list/standing.ts';
import type { Weight } from '@garboard/domain/rule/scheme.ts';
import { type RawBuilder, sql } from 'kysely';
import type { Scoped } from '../scope.ts';
import type { DueFilter, Totals } from './due-entry.ts';
import { countsMatters } from './list-matters.ts';
import { countUp } from './totals.ts';

/** Of the filter only what says which things are meant: not how they stand, nor how far ahead. */
export async function countStored(tx: Scoped, day: Day, filter: DueFilter = {}): Promise<Totals> {
  const on = formatDay(day);
  const meant = conditions(filter);
  const { rows } = await sql<{ standing: CountedAs; weight: Weight; n: number; vessels: number }>`
    with day as (${isKept(filter) ? KEPT : COUNTED(meant)}), counted as materialized (
      select case
          when overdue_after = 'infinity' then 'unknown'
          when suspended @> ${on}::date then 'suspended'
          when overdue_after < ${on}::date then 'overdue'
          when due_from <= ${on}::date then 'due'
          else 'in_date'
        end as standing, weight, sum(n)::integer as n
      from day where ${filter.weight ? sql`weight = ${filter.weight}` : sql`true`} group by 1, 2
    ), late as materialized (
      select count(*)::integer as vessels from (${late(filter, meant, on)}) late
    )
    select standing, weight, n, vessels from late left join counted on true`.execute(tx);
  return { counts: countUp(rows.filter(({ n }) => n !== null)), vesselsOverdue: rows[0]?.vessels ?? 0 };
}

/** The vessels with something overdue, by obligations and by what was found. */
function late(filter: DueFilter, meant: RawBuilder<unknown>, on: string): RawBuilder<unknown> {
  const { vesselId } = filter;
  const obligations = filter.weight || !isKept(filter) ? lateOf(meant, on) : lateOfAll(on);
  if (!countsMatters(filter)) return obligations;
  const hers = vesselId === undefined ? sql`true` : sql`vessel_id = ${vesselId}::uuid`;
  return sql`${obligations} union select vessel_id from matter where overdue_after < ${on}::date and ${hers}`;
}

function isKept({ vesselId, kind, scheme }: DueFilter): boolean {
  return vesselId === undefined && kind === undefined && scheme === undefined;
}

/** The second half runs in a scope of some vessels only. */
const KEPT = sql`
  select overdue_after, due_from, suspended, weight, n from day_count
  union all
  select overdue_after, due_from, suspended, weight, count(*) from obligation
   where current_setting('app.vessels') <> 'all' group by 1, 2, 3, 4`;

const COUNTED = (meant: RawBuilder<unknown>) => sql`
  select overdue_after, due_from, suspended, weight, count(*) as n from obligation where ${meant} group by 1, 2, 3, 4`;

function conditions({ vesselId, kind, scheme, weight }: DueFilter): RawBuilder<unknown> {
  const all = [
    ...(vesselId === undefined ? [] : [sql`vessel_id = ${vesselId}::uuid`]),
    ...(kind === undefined ? [] : [sql`item_id in (select id from item where kind = ${kind})`]),
    ...(scheme === undefined ? [] : [sql`scheme = ${scheme}`]),
    ...(weight === undefined ? [] : [sql`weight = ${weight}`]),
  ];
  return all.length === 0 ? sql`true` : sql.join(all, sql` and `);
}

/** The vessels with something overdue: by what is never suspended, and by what is not on the day. */
const lateOfAll = (on: string) => sql`
  select vessel_id from vessel_standing where earliest_overdue_after < ${on}::date
  union
  select vessel_id from obligation
   where suspended <> '{}' and overdue_after < ${on}::date and not suspended @> ${on}::date`;

const lateOf = (meant: RawBuilder<unknown>, on: string) => sql`
  select distinct vessel_id from obligation
   where overdue_after < ${on}::date and not suspended @> ${on}::date and ${meant}`;
