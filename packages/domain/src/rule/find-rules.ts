/** Rules that answer to some words. */
import type { Rule } from './rule.ts';

const wordsOf = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** Every word asked begins one of the rule's: of what it asks, its publication and clause, its kinds, its id. */
export function rulesAnswering(rules: readonly Rule[], asked: string): Rule[] {
  const terms = wordsOf(asked);
  if (terms.length === 0) return [];
  return rules.filter((rule) => {
    const words = wordsOf(textOf(rule));
    return terms.every((term) => words.some((word) => word.startsWith(term)));
  });
}

function textOf({ id, inWords, source, kinds, duties }: Rule): string {
  const { publication, clause } = source;
  return [id, inWords, publication, clause, ...kinds, ...duties.map(({ action }) => action.words)].join(' ');
}
