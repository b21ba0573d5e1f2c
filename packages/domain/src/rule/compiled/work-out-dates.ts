/**
 * Every date of many items, by a compiled plan over columns, and nothing but dates: no word, no reason, and
 * nothing made anew for an item. The explaining engine says the same days; `equal.properties.test.ts` holds them together.
 */
import type { Cut } from '../../item/unit-aboard.ts';
import { type Aboard, nothingAboard } from './aboard.ts';
import { NO_DAY, NONE } from './codes.ts';
import { type DutyDays, dateDuty, noDays } from './date-duty.ts';
import { type Dates, dropAfterWithdrawal, makeRoom, putDown } from './dates.ts';
import type { ItemColumns } from './item-columns.ts';
import { overrideRow } from './override-row.ts';
import type { DutyPlan, Plan, RulePlan } from './plan.ts';
import { lastThatCounts } from './resets.ts';
import { ABOARD, takeAboard } from './take-aboard.ts';
import { clearAttributes, takeAttributes } from './take-attributes.ts';
import { takeEvents } from './take-events.ts';

/** Writes the dates of all items into `dates`, over what was there. */
export function workOutDates(plan: Plan, columns: ItemColumns, cut: Cut, dates: Dates): void {
  const knownAt = cut.knownAt === undefined ? Number.POSITIVE_INFINITY : Date.parse(cut.knownAt);
  const aboard = nothingAboard(columns, { asOf: cut.asOf ?? NO_DAY - 1, knownAt });
  const days = noDays();
  dates.count = 0;
  for (let item = 0; item < columns.items; item++) {
    makeRoom(plan.most, item, dates);
    const status = takeAboard(item, aboard);
    dates.status.of[item] = status;
    if (status === ABOARD) workOutItem(plan, item, aboard, days, dates);
  }
}

function workOutItem(plan: Plan, item: number, aboard: Aboard, days: DutyDays, dates: Dates): void {
  const vessel = aboard.columns.item.vessel[item] as number;
  takeEvents(vessel, aboard);
  takeAttributes(item, aboard);
  for (const rule of plan.rulesOf[aboard.kind] as readonly RulePlan[]) {
    if (bears(rule, vessel, plan, aboard) && rule.appliesWhen(aboard)) workOutRule(rule, item, aboard, days, dates);
  }
  clearAttributes(item, aboard);
}

/** A bit that no scheme has: a rule that always applies has it too. */
const EVERY_VESSEL = 1 << 31;

function bears({ scheme, own }: RulePlan, vessel: number, plan: Plan, { columns }: Aboard): boolean {
  if (own !== NONE) return columns.ownRules.bears[vessel * plan.own.length + own] === 1;
  return (scheme & ((columns.vessel.schemes[vessel] as number) | EVERY_VESSEL)) !== 0;
}

function workOutRule(rule: RulePlan, item: number, aboard: Aboard, days: DutyDays, dates: Dates): void {
  const from = dates.count;
  for (const duty of rule.duties) {
    if (!duty.appliesWhen(aboard)) continue;
    aboard.resets = duty.resets;
    aboard.lastAt = lastThatCounts(duty.resets, aboard);
    aboard.last = aboard.lastAt === NONE ? NONE : (aboard.rows[aboard.lastAt] as number);
    const own = overrideRow(duty.number, item, aboard);
    if (own !== NONE) workOutOwn(rule, duty, own, item, aboard, days, dates);
    else if (dateDuty(duty, false, aboard, days)) putDown(item, duty, rule.weight, false, days, dates);
  }
  if (rule.withdraws) dropAfterWithdrawal(from, dates);
}

/** Advice gives way to the organisation's own interval; what binds stays, and the other stands beside it. */
function workOutOwn(
  rule: RulePlan,
  duty: DutyPlan,
  own: number,
  item: number,
  aboard: Aboard,
  days: DutyDays,
  dates: Dates,
): void {
  const { months, days: more, weight } = aboard.columns.overrides;
  const before = dates.count;
  if (!dateDuty(duty, false, aboard, days)) return;
  if (rule.isBinding) putDown(item, duty, rule.weight, false, days, dates);
  aboard.ownMonths = months[own] as number;
  aboard.ownDays = more[own] as number;
  if (dateDuty(duty, true, aboard, days)) putDown(item, duty, weight[own] as number, rule.isBinding, days, dates);
  else dates.count = before;
}
