/** What a change of an organisation's own rule can touch: the things that any of its texts bears on. */
import type { ItemKindId } from '../item/item-kind.ts';
import type { OwnRuleDefinition } from './own-rule.ts';
import type { SchemeId } from './scheme.ts';

/** A vessel is touched where all are, where she is under one of `schemes`, or where she is named. */
export type OwnRuleTouch = {
  readonly kinds: readonly ItemKindId[];
  readonly everyVessel: boolean;
  readonly schemes: readonly SchemeId[];
  readonly vesselIds: readonly string[];
};

/** Of the text that was in force and the one that takes its place; `null`: none. */
export function touchOf(texts: readonly (OwnRuleDefinition | null)[]): OwnRuleTouch {
  const there = texts.filter((each) => each !== null);
  const vessels = there.map((each) => each.vessels);
  return {
    kinds: [...new Set(there.flatMap(({ kinds }) => kinds))],
    everyVessel: vessels.some(({ which }) => which === 'all'),
    schemes: vessels.flatMap((each) => (each.which === 'under_scheme' ? [each.scheme] : [])),
    vesselIds: [...new Set(vessels.flatMap((each) => (each.which === 'chosen' ? each.vesselIds : [])))],
  };
}
