/** A rule's parts as a sentence says them. */
import { orList } from '../item/explanation-words.ts';
import { byWhomWords, factWords, testWords } from '../strings/codes.ts';
import { strings, whoAsks } from '../strings/rule.ts';
import { inAList, sentenceCase } from '../ui/number-words.ts';
import type { Rule } from './worked-example.ts';

type Reset = Rule['duties'][number]['resets'][number];
type Named = { readonly id: string; readonly name: string };

/** "Inflatable liferaft: what SOLAS asks". What a name adds after a colon of its own is left out. */
export function titleOf({ kinds: ids, scheme }: Rule, kinds: readonly Named[]): string {
  const names = namesOf(ids, kinds).map((name) => name.split(':')[0] ?? name);
  const asks = strings.rule.asksOf(whoAsks[scheme]);
  if (names.length === 0) return sentenceCase(asks);
  return names.length <= 2
    ? `${sentenceCase(inAList(names))}: ${asks}`
    : `${sentenceCase(asks)} ${strings.rule.ofKinds(names.length)}`;
}

export function namesOf(ids: readonly string[], kinds: readonly Named[]): string[] {
  return ids.map((id) => kinds.find((kind) => kind.id === id)?.name ?? id);
}

/** "tested (hydrostatic test) by a fire equipment technician". */
export function resetInWords({ act, tests, by }: Reset): string {
  const which = tests && tests.length > 0 ? ` (${orList(tests.map((test) => testWords[test]))})` : '';
  const who = by.length === 0 ? strings.rule.anybody : strings.rule.by(orList(by.map((one) => byWhomWords[one])));
  return `${factWords[act]}${which}${who}`;
}
