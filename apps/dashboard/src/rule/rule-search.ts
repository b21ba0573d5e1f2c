/** What the address of the rules may say. Anything else in it is left aside. */
import { text } from '../due-list/due-search.ts';
import { type SchemeCode, schemeWords, type WeightCode, weightWords } from '../strings/codes.ts';
import type { Rule } from './worked-example.ts';

export type RuleSearch = {
  scheme?: SchemeCode | undefined;
  kind?: string | undefined;
  weight?: WeightCode | undefined;
};

export function readRuleSearch(raw: Record<string, unknown>): RuleSearch {
  const kind = text(raw.kind);
  const scheme = codes(schemeWords).find((code) => code === raw.scheme);
  const weight = codes(weightWords).find((code) => code === raw.weight);
  return { ...(scheme && { scheme }), ...(kind && { kind }), ...(weight && { weight }) };
}

const codes = <Code extends string>(words: Record<Code, string>) => Object.keys(words) as Code[];

export function answersTo({ scheme, kind, weight }: RuleSearch, rule: Rule): boolean {
  return (
    (!scheme || rule.scheme === scheme) && (!kind || rule.kinds.includes(kind)) && (!weight || rule.weight === weight)
  );
}

export function isNarrowed(search: RuleSearch): boolean {
  return Object.values(search).some((each) => each !== undefined);
}
