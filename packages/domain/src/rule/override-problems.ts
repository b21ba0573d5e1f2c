/** What is wrong with somebody's own figure before it is held against a vessel: the rule, the duty, the period. */
import type { ItemKindId } from '../item/item-kind.ts';
import { judgeOverride, type Override } from './override.ts';
import { findRule } from './rules.ts';

export type OverrideProblem = { readonly pointer: string; readonly detail: string };

/** `kind`: of the one thing that it is for; `null`: for everything aboard that the rule bears on. */
export function overrideProblems(
  { ruleId, duty: dutyId, period }: Pick<Override, 'ruleId' | 'duty'> & { readonly period: string },
  kind: ItemKindId | null,
): readonly OverrideProblem[] {
  const rule = findRule(ruleId);
  if (!rule) return [{ pointer: '/ruleId', detail: 'is no rule in the catalogue' }];
  const duty = rule.duties.find(({ id }) => id === dutyId);
  if (!duty) {
    const all = rule.duties.map(({ id }) => id).join(', ');
    return [{ pointer: '/duty', detail: `is none of the rule’s duties: ${all}` }];
  }
  if (kind && !(duty.onlyFor ?? rule.kinds).includes(kind)) {
    return [{ pointer: '/ruleId', detail: 'does not bear on an item of this kind' }];
  }
  const verdict = judgeOverride(rule, duty, period);
  return verdict.kind === 'refused' ? [{ pointer: `/${verdict.at}`, detail: verdict.reason }] : [];
}
