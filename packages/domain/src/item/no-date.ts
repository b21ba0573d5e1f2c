/** What a check says of a thing that nothing gives a date: missing knowledge is never shown as fine. */
import type { Rule } from '../rule/rule.ts';
import type { Obligation } from './obligation.ts';

/** The obligations of one thing, with what the rules that bear on it say when none of them has a date. */
export function sayWithoutDate(obligations: readonly Obligation[], rules: readonly Rule[]): readonly Obligation[] {
  if (obligations.some(({ outcome }) => outcome.kind === 'dated')) return obligations;
  const said = rules.flatMap(({ checks, source }) =>
    checks.flatMap((check) =>
      check.kind === 'no_date' ? [`There is no date to go by: ${check.inWords} (${source.publication}).`] : [],
    ),
  );
  return obligations.map(({ explanation, ...obligation }) => ({
    ...obligation,
    explanation: { ...explanation, doubts: [...explanation.doubts, ...said] },
  }));
}
