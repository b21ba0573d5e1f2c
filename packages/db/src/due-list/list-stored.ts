/**
 * The due list from the stored obligations: one index range, then the names.
 *
 * The join comes after the limit and the limit is a literal, so that the plan's cost is the page's, not the
 * fleet's. The text is made once for each set of filters; afterwards only its parameters change.
 */
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Standing } from '@garboard/domain/due-list/standing.ts';
import type { DueSource } from '@garboard/domain/safety-notice/notice.ts';
import { CompiledQuery, type Selectable } from 'kysely';
import { toObligation } from '../item/obligation-record.ts';
import type { ObligationTable } from '../item/tables.ts';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { DueEntry, DueFilter, DueQuestion } from './due-entry.ts';
import { isMatterSource } from './list-matters.ts';

type Row = Selectable<ObligationTable> & {
  vessel_name: string;
  kind: string;
  label: string;
  zone: string | null;
  quantity: number;
};

/** A condition with `?` for each of its parameters. */
type Condition = { readonly text: string; readonly values: readonly unknown[] };

export async function listStored(tx: Scoped, question: DueQuestion): Promise<Page<DueEntry>> {
  const { rows } = await tx.executeQuery<Row>(listStatement(question));
  return pageOf(rows.map(toEntry), question.limit);
}

/** The statement by itself, so that its plan can be looked at. */
export function listStatement(question: DueQuestion): CompiledQuery<Row> {
  const conditions = conditionsOf(question);
  const text = statement(conditions.map(({ text }) => text).join(' and '), question.limit + 1);
  return CompiledQuery.raw(
    text,
    conditions.flatMap(({ values }) => values),
  ) as CompiledQuery<Row>;
}

function conditionsOf({ day, filter, after }: DueQuestion): Condition[] {
  const at = (text: string, ...values: unknown[]): Condition[] => [{ text, values }];
  return [
    ...standingCondition(filter, formatDay(day)),
    ...(filter.vesselId ? at('vessel_id = ?::uuid', filter.vesselId) : []),
    ...(filter.scheme ? at('scheme = ?', filter.scheme) : []),
    ...(filter.weight ? at('weight = ?', filter.weight) : []),
    ...(filter.source && !isMatterSource(filter.source) ? at(OF_SOURCE[filter.source]) : []),
    ...(filter.kind ? at('item_id in (select id from item where kind = ?)', filter.kind) : []),
    ...(filter.horizonDays === undefined || filter.standing === 'unknown'
      ? []
      : at('overdue_after <= ?::date', formatDay(addDays(day, filter.horizonDays)))),
    ...(after
      ? at(
          '(overdue_after, item_id, rule_id, duty) > (?::date, ?::uuid, ?, ?)',
          after.overdueAfter,
          after.itemId,
          after.ruleId,
          after.duty,
        )
      : []),
  ];
}

const OF_SOURCE: Record<DueSource, string> = {
  obligation: "rule_id not like 'notice:%'",
  safety_notice: "rule_id like 'notice:%'",
};

const DATED = "overdue_after < 'infinity'";
const SUSPENDED = 'suspended @> ?::date';

/** `suspended` is empty for nearly everything, so it stands last: it is seldom looked at. */
function standingCondition({ standing, suspended }: DueFilter, day: string): Condition[] {
  if (!suspended) return activeCondition(standing, day);
  return [{ text: `suspended <> '{}' and ${DATED} and ${SUSPENDED}`, values: [day] }];
}

function activeCondition(standing: Standing | undefined, day: string): Condition[] {
  const active = `not ${SUSPENDED}`;
  switch (standing) {
    case undefined:
      return [{ text: `${DATED} and ${active}`, values: [day] }];
    case 'unknown':
      return [{ text: "overdue_after = 'infinity'", values: [] }];
    case 'overdue':
      return [{ text: `overdue_after < ?::date and ${active}`, values: [day, day] }];
    case 'due':
      return [
        {
          text: `overdue_after >= ?::date and ${DATED} and due_from <= ?::date and ${active}`,
          values: [day, day, day],
        },
      ];
    case 'in_date':
      return [
        { text: `overdue_after >= ?::date and ${DATED} and due_from > ?::date and ${active}`, values: [day, day, day] },
      ];
  }
}

const statements = new Map<string, string>();

function statement(conditions: string, limit: number): string {
  const shape = `${limit} ${conditions}`;
  const known = statements.get(shape) ?? numbered(LIST(conditions, limit));
  statements.set(shape, known);
  return known;
}

const LIST = (conditions: string, limit: number) => `
  select o.*, v.name as vessel_name, i.kind, i.label, i.zone, i.quantity
  from (
    select * from obligation
    where ${conditions}
    order by overdue_after, item_id, rule_id, duty
    limit ${limit}
  ) o
  join vessel v on v.organisation_id = o.organisation_id and v.id = o.vessel_id
  join item i on i.organisation_id = o.organisation_id and i.id = o.item_id
  order by o.overdue_after, o.item_id, o.rule_id, o.duty`;

function numbered(text: string): string {
  let parameter = 0;
  return text.replaceAll('?', () => `$${++parameter}`);
}

function toEntry(row: Row): DueEntry {
  return {
    vessel: { id: row.vessel_id, name: row.vessel_name },
    item: { id: row.item_id, kind: row.kind, label: row.label, zone: row.zone, quantity: row.quantity },
    obligation: toObligation(row),
  };
}
