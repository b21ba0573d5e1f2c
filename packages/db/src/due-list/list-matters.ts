/** The due list's matters: one index range in the list's own order, and their counts. */
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Standing } from '@garboard/domain/due-list/standing.ts';
import { MATTER_SOURCES, type MatterSource } from '@garboard/domain/finding/matter.ts';
import { type RawBuilder, sql } from 'kysely';
import { NO_DATE } from '../item/obligation-record.ts';
import type { Scoped } from '../scope.ts';
import type { DueFilter, DueKey, DueQuestion, MatterCounts, MatterEntry } from './due-entry.ts';

/** Whether the question means matters at all: they are of no kind, under no scheme, of no weight and never suspended. */
export const meansMatters = (filter: DueFilter): boolean =>
  countsMatters(filter) && (filter.source === undefined || isMatterSource(filter.source));

/** The same of their counts, which are of every source. */
export const countsMatters = ({ kind, scheme, weight, suspended }: DueFilter): boolean =>
  [kind, scheme, weight, suspended].every((each) => each === undefined);

export const isMatterSource = (source: string): source is MatterSource =>
  (MATTER_SOURCES as readonly string[]).includes(source);

type Row = {
  id: string;
  source: MatterSource;
  vessel_id: string;
  vessel_name: string;
  zone: string;
  label: string;
  action: string;
  sentence: string;
  urgency: string | null;
  trade: string | null;
  responsible: string | null;
  due_from: string;
  overdue_after: string;
};

/** One more than the page holds, as the obligations are asked for. */
export async function listMatters(tx: Scoped, { day, filter, limit, after }: DueQuestion): Promise<MatterEntry[]> {
  const on = formatDay(day);
  const horizon = filter.horizonDays === undefined || filter.standing === 'unknown' ? undefined : filter.horizonDays;
  const conditions = [
    ...meant(filter),
    ofStanding(filter.standing, on),
    ...(horizon === undefined ? [] : [sql`m.overdue_after <= ${formatDay(addDays(day, horizon))}::date`]),
    ...(after ? [isAfter(after)] : []),
  ];
  const { rows } = await sql<Row>`
    select m.*, v.name as vessel_name from (
      select * from matter m where ${sql.join(conditions, sql` and `)}
      order by overdue_after, id limit ${sql.lit(limit + 1)}
    ) m join vessel v on v.organisation_id = m.organisation_id and v.id = m.vessel_id
    order by m.overdue_after, m.id`.execute(tx);
  return rows.map(toMatterEntry);
}

const isAfter = ({ overdueAfter, itemId }: DueKey) =>
  sql`(m.overdue_after, m.id) > (${overdueAfter}::date, ${itemId}::uuid)`;

function meant({ vesselId, source }: DueFilter): RawBuilder<unknown>[] {
  return [
    ...(vesselId === undefined ? [] : [sql`m.vessel_id = ${vesselId}::uuid`]),
    ...(source === undefined ? [] : [sql`m.source = ${source}`]),
  ];
}

function ofStanding(standing: Standing | undefined, on: string): RawBuilder<unknown> {
  switch (standing) {
    case undefined:
      return sql`m.overdue_after < 'infinity'`;
    case 'unknown':
      return sql`m.overdue_after = 'infinity'`;
    case 'overdue':
      return sql`m.overdue_after < ${on}::date`;
    case 'due':
      return sql`m.overdue_after >= ${on}::date and m.overdue_after < 'infinity' and m.due_from <= ${on}::date`;
    case 'in_date':
      return sql`m.overdue_after >= ${on}::date and m.overdue_after < 'infinity' and m.due_from > ${on}::date`;
  }
}

function toMatterEntry(row: Row): MatterEntry {
  const { id, source, zone, label, action, sentence, urgency, trade, responsible, overdue_after } = row;
  const on = overdue_after === NO_DATE ? null : overdue_after;
  return {
    vessel: { id: row.vessel_id, name: row.vessel_name },
    matter: { id, source, zone, label, action, sentence, urgency, trade, responsible, on },
    dueFrom: row.due_from,
  };
}

/** All that waits aboard these vessels. */
export async function mattersOfVessels(tx: Scoped, vesselIds: readonly string[]): Promise<MatterEntry[]> {
  const { rows } = await sql<Row>`
    select m.*, v.name as vessel_name
    from matter m join vessel v on v.organisation_id = m.organisation_id and v.id = m.vessel_id
    where m.vessel_id = any (${vesselIds}::uuid[]) order by m.overdue_after, m.id`.execute(tx);
  return rows.map(toMatterEntry);
}

/** Open matters are few beside what rules ask: they are counted one by one. */
export async function countMatters(tx: Scoped, on: string, { vesselId }: DueFilter): Promise<MatterCounts> {
  const hers = vesselId === undefined ? sql`true` : sql`vessel_id = ${vesselId}::uuid`;
  const { rows } = await sql<MatterCounts>`
    select
      count(*) filter (where m.overdue_after < ${on}::date)::integer as overdue,
      count(*) filter (where m.overdue_after >= ${on}::date and m.overdue_after < 'infinity' and m.due_from <= ${on}::date)::integer as due,
      count(*) filter (where m.overdue_after < 'infinity' and m.due_from > ${on}::date and m.overdue_after >= ${on}::date)::integer as in_date,
      count(*) filter (where m.overdue_after = 'infinity')::integer as unknown
    from matter m where ${hers}`.execute(tx);
  const [counts] = rows;
  if (!counts) throw new Error('a count without a row');
  return counts;
}
