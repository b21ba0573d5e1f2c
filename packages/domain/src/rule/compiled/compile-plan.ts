/** Rules compiled into a plan, from the same data that the explaining engine reads. */
import { ITEM_KIND_IDS, type ItemKindId } from '../../item/item-kind.ts';
import type { Cut } from '../../item/unit-aboard.ts';
import { isBinding } from '../override.ts';
import { type OwnRuleVersion, ownRulesInForce } from '../own-rule.ts';
import type { Rule } from '../rule.ts';
import { isAlways, RULES } from '../rules.ts';
import { kindCode, NONE, schemeBits, weightCode } from './codes.ts';
import { compileApplies, type NumberValue } from './compile-condition.ts';
import { compileDuty } from './compile-duty.ts';
import type { Plan, RulePlan } from './plan.ts';

/** The published rules, then those of the organisation's own that are in force as at the cut. */
export function planAsAt(versions: readonly OwnRuleVersion[], cut: Cut): Plan {
  const own = ownRulesInForce(versions, cut).flatMap(({ rule, vessels }) => (rule ? [{ rule, vessels }] : []));
  return own.length === 0 ? PUBLISHED : compilePlan(own);
}

/** In the order in which their obligations come. */
function compilePlan(own: Plan['own']): Plan {
  const values = numbered();
  const rules = [...RULES, ...own.map(({ rule }) => rule)];
  const duties = rules.flatMap((rule) => rule.duties.map((duty) => ({ rule, duty })));
  const numbers = new Map(duties.map(({ rule, duty }, at) => [`${rule.id} ${duty.id}`, at]));
  const numberOf = (ruleId: string, duty: string) => numbers.get(`${ruleId} ${duty}`);
  const plans = rules.map((rule, at) => ({
    ...compileRule(rule, values.number, (duty) => numberOf(rule.id, duty) as number),
    own: at < RULES.length ? NONE : at - RULES.length,
  }));
  const rulesOf = ITEM_KIND_IDS.map((kind) =>
    plans.filter((plan) => plan.kinds.includes(kind)).map((plan) => ofKind(plan, kind)),
  );
  return { rulesOf, duties, own, numberOf, valueCode: values.code, most: mostDuties(rulesOf) };
}

/** The values that conditions ask for, numbered from 1 in the order in which they come; any other is nought. */
function numbered(): { number: NumberValue; code: Plan['valueCode'] } {
  const values = new Map<string | number | boolean, number>();
  const number: NumberValue = (value) => {
    const known = values.get(value) ?? values.size + 1;
    values.set(value, known);
    return known;
  };
  return { number, code: (value) => values.get(value) ?? 0 };
}

function ofKind(plan: RulePlan, kind: ItemKindId): RulePlan {
  const code = kindCode(kind);
  return { ...plan, duties: plan.duties.filter(({ onlyFor }) => onlyFor === null || onlyFor.includes(code)) };
}

/** A figure of the organisation's own may stand beside each of them. */
function mostDuties(rulesOf: Plan['rulesOf']): number {
  return 2 * Math.max(...rulesOf.map((rules) => rules.reduce((sum, { duties }) => sum + duties.length, 0)));
}

const EVERY_SCHEME = ~0;

function compileRule(rule: Rule, number: NumberValue, numberOf: (duty: string) => number): Omit<RulePlan, 'own'> {
  const duties = rule.duties.map((duty) => compileDuty(duty, number, numberOf(duty.id)));
  const withdraws = rule.duties.some(({ action }) => action.kind === 'withdraw');
  return {
    id: rule.id,
    kinds: rule.kinds,
    scheme: isAlways(rule.scheme) ? EVERY_SCHEME : schemeBits([rule.scheme]),
    weight: weightCode(rule.weight),
    isBinding: isBinding(rule),
    appliesWhen: compileApplies(rule.appliesWhen, number),
    duties,
    withdraws,
  };
}

const PUBLISHED = compilePlan([]);
