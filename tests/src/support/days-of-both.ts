/** What the explaining engine and the compiled rules say, in one form. */
import { formatDay } from '@garboard/domain/calendar/day.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { NO_DAY } from '@garboard/domain/rule/compiled/codes.ts';
import type { Dates } from '@garboard/domain/rule/compiled/dates.ts';
import type { Plan } from '@garboard/domain/rule/compiled/plan.ts';
import { WEIGHTS } from '@garboard/domain/rule/scheme.ts';
import type { RuleAndDuty } from './any-case.ts';

/** One obligation's days, as text where a test fails. */
export type Days = { readonly of: string; readonly weight: string; readonly days: readonly (string | null)[] };

export function daysSaid({ ruleId, duty, weight, outcome }: Obligation): Days {
  const dated = outcome.kind === 'dated' ? outcome : null;
  const days = [dated?.dueOn, dated?.overdueAfter, dated?.expiresOn, dated?.replaceBy, dated?.latestPermittedOn];
  return { of: `${ruleId} ${duty}`, weight, days: days.map((day) => (day === undefined ? null : formatDay(day))) };
}

export function daysCounted(plan: Plan, { count, order, rows }: Dates): readonly Days[] {
  return Array.from({ length: count }, (_, at): Days => {
    const row = order.of[at] as number;
    const { rule, duty } = plan.duties[rows.duty[row] as number] as RuleAndDuty;
    const days = [rows.dueOn, rows.overdueAfter, rows.expiresOn, rows.replaceBy, rows.latestPermittedOn];
    return {
      of: `${rule.id} ${duty.id}${rows.tightened[row] ? '.tightened' : ''}`,
      weight: WEIGHTS[rows.weight[row] as number] as string,
      days: days.map((column) => (column[row] === NO_DAY ? null : formatDay(column[row] as never))),
    };
  });
}
