/**
 * From facts to obligations. Pure: no clock, no I/O; the same facts give the same answer in any order.
 */
import { type Override, overrideInForce } from '../rule/override.ts';
import { type OwnRuleVersion, ownRulesFor } from '../rule/own-rule.ts';
import type { Applies, Duty, Rule } from '../rule/rule.ts';
import { dutyReads } from '../rule/rule-reads.ts';
import { RULES, rulesFor, suspendingRules } from '../rule/rules.ts';
import type { SchemeId } from '../rule/scheme.ts';
import type { UnderNotices } from '../safety-notice/judge-item.ts';
import { workOutNotices } from '../safety-notice/work-out-notices.ts';
import type { Situation, VesselEvent } from '../vessel/situation.ts';
import type { Attributes } from './attribute.ts';
import { doubtsOfChecks } from './check-stamp.ts';
import { dateOnRecord } from './date-on-record.ts';
import { doubtsOfMove } from './doubts-of-fact.ts';
import { eventsAsAt } from './events-ahead.ts';
import type { Fact, FactKind } from './fact.ts';
import type { ItemKindId } from './item-kind.ts';
import { lastDone } from './last-done.ts';
import { sayWithoutDate } from './no-date.ts';
import type { Obligation } from './obligation.ts';
import { withSuspension } from './suspension.ts';
import { type Cut, type FactSetAside, unitAboard } from './unit-aboard.ts';
import { conditionInWords, type Particulars, weighCondition } from './weigh-condition.ts';
import { afterWithdrawal } from './withdrawal.ts';
import { type Remarks, workOutDuty } from './work-out-duty.ts';
import { workOutOverridden } from './work-out-overridden.ts';

export type { Attributes, Cut };

export type ItemHistory = {
  readonly kind: ItemKindId;
  readonly attributes: Attributes;
  readonly facts: readonly Fact[];
  /** The organisation's own figures for this item or for everything aboard, ended ones too. */
  readonly overrides?: readonly Override[];
  /** Absent: no notice bears on its kind. */
  readonly underNotices?: UnderNotices;
};

export type VesselHistory = {
  /** Absent: she is nowhere stored. */
  readonly id?: string;
  readonly schemes: readonly SchemeId[];
  readonly situations: readonly Situation[];
  readonly events: readonly VesselEvent[];
  /** Every version of the organisation's own rules; which of them bear on her is worked out here. */
  readonly ownRules?: readonly OwnRuleVersion[];
};

/**
 * Every obligation that the vessel's schemes put on the item, in the catalogue's order, then those of the
 * organisation's own rules, then those of open safety notices; none once it is withdrawn, and none before it was
 * fitted.
 */
export function workOutObligations(item: ItemHistory, vessel: VesselHistory, cut: Cut = {}): readonly Obligation[] {
  const unit = unitAboard(item.facts, cut);
  if (unit.kind !== 'aboard') return [];
  const { facts, setAside } = unit;
  const aboard: Aboard = {
    kind: item.kind,
    attributes: item.attributes,
    manufactured: dateOnRecord(facts, ['manufactured'])?.fact.on ?? null,
    facts,
    events: eventsAsAt(vessel.events, cut),
    setAside,
  };
  const rules = [...rulesFor(item.kind, vessel.schemes), ...ownRulesFor(item.kind, vessel, cut)].filter((rule) =>
    applies(rule, aboard),
  );
  const stampDoubts = rules.flatMap((rule) => doubtsOfChecks(rule, facts));
  const suspending = suspendingRules(vessel.schemes);
  const { overrides = [] } = item;
  const obligations = rules.flatMap((rule) =>
    workOutRule(rule, aboard, stampDoubts, (duty) => overrideInForce(overrides, { ruleId: rule.id, duty }, cut)),
  );
  const byRules = sayWithoutDate(obligations, rules).map((obligation) =>
    withSuspension(obligation, suspending, vessel.situations, cut),
  );
  // Laying up suspends nothing that a notice asks.
  return item.underNotices
    ? [...byRules, ...workOutNotices(item.underNotices, { kind: item.kind, facts }, cut)]
    : byRules;
}

/** Whether what is aboard has been withdrawn, and nothing put in its place. */
export function isWithdrawn(item: ItemHistory, cut: Cut = {}): boolean {
  return unitAboard(item.facts, cut).kind === 'withdrawn';
}

type Aboard = Particulars & {
  readonly facts: readonly Fact[];
  readonly events: readonly VesselEvent[];
  readonly setAside: readonly FactSetAside[];
};

function workOutRule(
  rule: Rule,
  aboard: Aboard,
  stampDoubts: readonly string[],
  overrideOf: (duty: string) => Override | undefined,
): readonly Obligation[] {
  const duties = rule.duties.filter((duty) => !duty.onlyFor || duty.onlyFor.includes(aboard.kind));
  return afterWithdrawal(
    duties
      .filter((duty) => applies(duty, aboard))
      .flatMap((duty) => {
        const grounds = { ...aboard, duty, last: lastDone(aboard.facts, duty.resets) };
        const remarks = remarksOn(duty, rule, aboard, stampDoubts);
        const override = overrideOf(duty.id);
        return override
          ? workOutOverridden(rule, grounds, remarks, override)
          : (workOutDuty(rule, grounds, remarks) ?? []);
      }),
  );
}

const FACTS_READ: ReadonlyMap<Duty, readonly FactKind[]> = new Map(
  RULES.flatMap(({ duties }) => duties.map((duty) => [duty, dutyReads(duty).facts] as const)),
);

function remarksOn(duty: Duty, rule: Rule, aboard: Aboard, stampDoubts: readonly string[]): Remarks {
  const read = FACTS_READ.get(duty) ?? dutyReads(duty).facts;
  const fromMemory = rule.source.fromMemory ? [`From memory, not read: ${rule.source.fromMemory}.`] : [];
  return {
    assumed: [rule, duty].flatMap(({ appliesWhen = [] }) => appliesWhen.flatMap((one) => assumption(one, aboard))),
    doubts: [...fromMemory, ...(read.includes('printed_expiry') ? stampDoubts : []), ...doubtsOfMove(aboard.facts)],
    setAside: aboard.setAside.filter(({ fact }) => read.includes(fact.fact)),
  };
}

function applies({ appliesWhen = [] }: Pick<Rule, 'appliesWhen'>, item: Particulars): boolean {
  return appliesWhen.every((one) => isSoOrTakenSo(one, item));
}

function isSoOrTakenSo({ condition, ifNotRecorded }: Applies, item: Particulars): boolean {
  switch (weighCondition(condition, item)) {
    case 'holds':
      return true;
    case 'fails':
      return false;
    case 'not_recorded':
      return ifNotRecorded === 'applies';
  }
}

function assumption({ condition, ifNotRecorded }: Applies, item: Particulars): string[] {
  if (ifNotRecorded !== 'applies' || weighCondition(condition, item) !== 'not_recorded') return [];
  return [`Not on record, and taken to be so: ${conditionInWords(condition)}.`];
}
