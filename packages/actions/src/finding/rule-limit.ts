/** By when the rule that a finding breaks wants its thing put right: a decision of one's own goes no further. */
import { loadBindingDays } from '@garboard/db/item/obligations.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import type { RemedialLimit } from '@garboard/domain/finding/entry.ts';
import type { Finding } from '@garboard/domain/finding/finding.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';

export async function ruleLimitOf(tx: Scoped, { ruleId, itemId }: Finding): Promise<RemedialLimit | null> {
  const rule = ruleId === null ? undefined : findRule(ruleId);
  if (!rule || itemId === null) return null;
  const [first] = await loadBindingDays(tx, itemId, rule.id);
  const { publication, clause } = rule.source;
  return first === undefined ? null : { on: first, source: [publication, clause].filter(Boolean).join(' ') };
}
