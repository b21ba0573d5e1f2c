/**
 * Every date of many items, by a compiled plan over columns, and nothing but dates: no word, no reason, and
 * nothing made anew for an item. The explaining engine says the same days; `equal.properties.test.ts` holds them together.
 */
import type { Cut } from '../../item/unit-aboard.ts';
import { type Aboard, nothingAboard } from './aboard.ts';
import { type Chunk, emptyChunk, inChunks } from './chunk.ts';
import { NO_DAY, NONE } from './codes.ts';
import { type DutyDays, dateDuty, noDays } from './date-duty.ts';
import { type BulkPlan, dateInBulk } from './date-in-bulk.ts';
import { type Dates, dropAfterWithdrawal, makeRoom, putDown, putInOrder, startAnew } from './dates.ts';
import { inGroups, KINDS } from './groups.ts';
import type { ItemColumns } from './item-columns.ts';
import { overrideRow } from './override-row.ts';
import type { DutyPlan, Plan, RulePlan } from './plan.ts';
import { lastThatCounts } from './resets.ts';
import { ABOARD, takeAboard, takeKind } from './take-aboard.ts';
import { clearAttributes, takeAttributes } from './take-attributes.ts';
import { takeEvents } from './take-events.ts';

/** Writes the dates of all items into `dates`, over what was there. */
export function workOutDates(plan: Plan, columns: ItemColumns, cut: Cut, dates: Dates): void {
  const knownAt = cut.knownAt === undefined ? Number.POSITIVE_INFINITY : Date.parse(cut.knownAt);
  const aboard = nothingAboard(columns, { asOf: cut.asOf ?? NO_DAY - 1, knownAt });
  const run: Run = { plan, aboard, days: noDays(), chunk: emptyChunk(), dates };
  const { items, from, schemes } = inGroups(aboard);
  const singles = schemes.length * KINDS;
  startAnew(columns.items, dates);
  for (let group = 0; group < singles; group++) {
    if (from[group] === from[group + 1]) continue;
    const bits = schemes[Math.floor(group / KINDS)] as number;
    workOutGroup(group % KINDS, bits, items.subarray(from[group], from[group + 1]), run);
  }
  for (let at = from[singles] as number; at < items.length; at++) workOutItem(items[at] as number, run);
  putInOrder(columns.items, dates);
}

type Run = {
  readonly plan: Plan;
  readonly aboard: Aboard;
  readonly days: DutyDays;
  readonly chunk: Chunk;
  readonly dates: Dates;
};

/** Plain items of one kind: a rule at a time, each for all of them where its shapes allow. */
function workOutGroup(kind: number, schemes: number, items: Int32Array, run: Run): void {
  const { plan, aboard, chunk, dates } = run;
  const rules = (plan.rulesOf[kind] as readonly RulePlan[]).filter((rule) => canBear(rule, schemes));
  const duties = rules.map((rule) => bulkDuties(rule, kind, aboard));
  inChunks(items, chunk, aboard, () => {
    for (let at = 0; at < chunk.count; at++) dates.status.of[chunk.items[at] as number] = ABOARD;
    for (const [at, rule] of rules.entries()) {
      const inBulk = duties[at] ?? null;
      if (inBulk !== null) for (const duty of inBulk) dateInBulk(duty, rule.weight, chunk, aboard, dates);
      else for (let each = 0; each < chunk.count; each++) workOutOne(rule, chunk.items[each] as number, run);
    }
  });
}

/**
 * Those of its duties that apply, if each can be dated in bulk and none drops another; else `null`. Nothing is
 * known of these items beside their facts, so that a condition is the same for all of them.
 */
function bulkDuties(rule: RulePlan, kind: number, aboard: Aboard): readonly BulkPlan[] | null {
  if (rule.own !== NONE || rule.withdraws) return null;
  takeKind(kind, aboard);
  const apply = rule.appliesWhen(aboard) ? rule.duties.filter((duty) => duty.appliesWhen(aboard)) : [];
  const inBulk = apply.filter((duty): duty is BulkPlan => duty.inBulk !== null);
  return inBulk.length === apply.length ? inBulk : null;
}

function workOutOne(rule: RulePlan, item: number, { plan, aboard, days, dates }: Run): void {
  takeAboard(item, aboard);
  const vessel = aboard.columns.item.vessel[item] as number;
  takeEvents(vessel, aboard);
  makeRoom(plan.most, dates);
  if (bears(rule, vessel, plan, aboard) && rule.appliesWhen(aboard)) workOutRule(rule, item, aboard, days, dates);
}

function workOutItem(item: number, { plan, aboard, days, dates }: Run): void {
  const status = takeAboard(item, aboard);
  dates.status.of[item] = status;
  if (status !== ABOARD) return;
  const vessel = aboard.columns.item.vessel[item] as number;
  takeEvents(vessel, aboard);
  takeAttributes(item, aboard);
  makeRoom(plan.most, dates);
  for (const rule of plan.rulesOf[aboard.kind] as readonly RulePlan[]) {
    if (bears(rule, vessel, plan, aboard) && rule.appliesWhen(aboard)) workOutRule(rule, item, aboard, days, dates);
  }
  clearAttributes(item, aboard);
}

/** A bit that no scheme has: a rule that always applies has it too. */
const EVERY_VESSEL = 1 << 31;

const canBear = ({ scheme, own }: RulePlan, schemes: number) =>
  own !== NONE || (scheme & (schemes | EVERY_VESSEL)) !== 0;

function bears(rule: RulePlan, vessel: number, plan: Plan, { columns }: Aboard): boolean {
  if (rule.own !== NONE) return columns.ownRules.bears[vessel * plan.own.length + rule.own] === 1;
  return canBear(rule, columns.vessel.schemes[vessel] as number);
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
