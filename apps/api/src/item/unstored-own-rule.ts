/** An own rule as a request to explain states it: no vessels, as the one asked about is nowhere stored. */

import type { UnstoredOwnRule } from '@garboard/contract/item/explain.ts';
import type { Fault } from '@garboard/contract/problem.ts';
import { dayOfText } from '@garboard/domain/calendar/day.ts';
import type { OwnRuleVersion } from '@garboard/domain/rule/own-rule.ts';
import { ownRuleAsRule } from '@garboard/domain/rule/own-rule-as-rule.ts';
import { ownRuleProblems } from '@garboard/domain/rule/own-rule-problems.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';
import { definitionOf } from '../rule/own-rule-input.ts';

const ALL = { which: 'all' } as const;
const nameOf = ({ id }: UnstoredOwnRule, at: number) => id ?? `own-${at}`;

export function ownRuleFaults(rules: readonly UnstoredOwnRule[]): Fault[] {
  const names = rules.map(nameOf);
  return rules.flatMap((rule, at) => {
    const name = nameOf(rule, at);
    const isTaken = names.indexOf(name) < at || findRule(name) !== undefined;
    return [
      ...(isTaken ? [{ pointer: `/ownRules/${at}/id`, detail: 'stands for another rule already' }] : []),
      ...ownRuleProblems(definitionOf({ ...rule, vessels: ALL })).map(({ pointer, detail }) => ({
        pointer: `/ownRules/${at}${pointer}`,
        detail,
      })),
    ];
  });
}

/** `always`: stands for "always known". */
export function toOwnRule(stated: UnstoredOwnRule, at: number, always: string): OwnRuleVersion {
  const ruleId = nameOf(stated, at);
  const takesEffectOn = dayOfText(stated.takesEffectOn);
  const definition = definitionOf({ ...stated, vessels: ALL });
  return {
    ...{ ruleId, number: 1, takesEffectOn, recordedAt: stated.recordedAt ?? always, vessels: ALL },
    rule: ownRuleAsRule(ruleId, definition, { ...stated, takesEffectOn }),
  };
}
