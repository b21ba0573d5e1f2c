/** Lays a fleet's own rules down through the actions, each version on its day, and works through what follows. */
import { addOwnRule, changeOwnRule } from '@garboard/actions/rule/lay-down-rule.ts';
import { workThroughRuleChanges } from '@garboard/actions/rule/work-through-rule-changes.ts';
import type { Db } from '@garboard/db/pool.ts';
import { officeHours, wanted } from './office.ts';
import type { OwnRulePlan } from './plan.ts';

export async function layOutOwnRules(
  db: Db,
  organisationId: string,
  plans: readonly OwnRulePlan[],
  now: Date,
): Promise<void> {
  const at = officeHours(db, organisationId);
  for (const [first, ...others] of plans) {
    if (!first) continue;
    let rule = wanted(await addOwnRule(at(first.laidDownOn), first.version));
    for (const { laidDownOn, version } of others) {
      const next = { ...version, ruleId: rule.id, expectedVersion: rule.version };
      rule = wanted(await changeOwnRule(at(laidDownOn), next));
    }
  }
  await workThroughRuleChanges(db, organisationId, now);
}
