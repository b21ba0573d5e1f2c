/** What a request lays down, as values of the domain. */
import type { NewOwnRule, OwnRuleText } from '@garboard/contract/rule/own-rule.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { OwnRuleDefinition } from '@garboard/domain/rule/own-rule.ts';
import { given } from '../request/given.ts';

/** Part by part: what else the request says is no part of it. Periods and kinds have their shape; the rest is judged. */
export function definitionOf({
  kinds,
  vessels,
  action,
  inWords,
  limits,
  first,
  window,
  resets,
  weight,
}: OwnRuleText): OwnRuleDefinition {
  return {
    kinds: kinds as ItemKindId[],
    ...{ vessels, action, inWords, limits, weight },
    resets: resets.map(given),
    ...(first && { first }),
    ...(window && { window }),
  } as OwnRuleDefinition;
}

export function versionOf(asked: NewOwnRule) {
  const { takesEffectOn, decidedBy, reason, document } = asked;
  return { takesEffectOn, decidedBy, reason, document, definition: definitionOf(asked) };
}
