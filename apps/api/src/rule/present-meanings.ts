/** What the codes mean that a rule reads, so that a request can be written from its page alone. */
import type { Rule } from '@garboard/contract/rule/rule.ts';
import { EVENT_MEANINGS, FACT_MEANINGS, SITUATION_MEANINGS } from '@garboard/domain/item/meanings.ts';
import { actInWords, capacitiesInWords } from '@garboard/domain/item/words.ts';
import type * as domain from '@garboard/domain/rule/rule.ts';
import type { RuleReads } from '@garboard/domain/rule/rule-reads.ts';

type Meaning = Rule['reads']['meanings'][number];

export function presentMeanings(reads: RuleReads, { duties }: domain.Rule): Meaning[] {
  const capacities = new Set(duties.flatMap(({ resets }) => resets.flatMap(({ by }) => by)));
  return [
    ...reads.facts.map((code): Meaning => ({ of: 'fact', code, words: FACT_MEANINGS[code] })),
    ...reads.tests.map((code): Meaning => ({ of: 'test', code, words: actInWords('tested', code) })),
    ...reads.events.map((code): Meaning => ({ of: 'event', code, words: EVENT_MEANINGS[code] })),
    ...reads.situations.map((code): Meaning => ({ of: 'situation', code, words: SITUATION_MEANINGS[code] })),
    ...[...capacities].map((code): Meaning => ({ of: 'capacity', code, words: capacitiesInWords([code]) })),
  ];
}
