/** What somebody who has done the work would record: the first act that moves the date, else what the action's own word says. */
import type { ActionKind, FactCode, TestCode } from '../strings/codes.ts';
import type { Obligation } from './item.query.ts';

export const FACT_OF_ACTION: Record<ActionKind, FactCode> = {
  service: 'serviced',
  inspect: 'inspected',
  test: 'tested',
  replace: 'replaced',
  withdraw: 'withdrawn',
  overhaul: 'overhauled',
  stop_using: 'inspected',
  return: 'withdrawn',
};

export function factThatAnswers({ action, explanation }: Obligation): { fact: FactCode; test?: TestCode } {
  const [first] = explanation.wouldChangeIt;
  if (!first) return { fact: FACT_OF_ACTION[action.kind] };
  return first.test ? { fact: first.act, test: first.test } : { fact: first.act };
}
