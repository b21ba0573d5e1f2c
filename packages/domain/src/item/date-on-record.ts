/** The one date that counts where several facts of a kind may be on record. */
import { recordedDateInWords } from '../calendar/words.ts';
import type { Fact, FactKind } from './fact.ts';
import { actInWords } from './words.ts';

export type DateOnRecord = { readonly fact: Fact; readonly doubts: readonly string[] };

/**
 * The manufacture, fitting or printed expiry on record: the more exact of two that agree, and the
 * earliest of those that do not, with the doubt. `null` when there is none that passed.
 */
export function dateOnRecord(facts: readonly Fact[], kinds: readonly FactKind[]): DateOnRecord | null {
  const dates = facts.filter((fact) => kinds.includes(fact.fact) && fact.outcome === 'passed');
  const exact = dates.filter((fact) => !dates.some((other) => isWithin(other, fact)));
  const [earliest, ...others] = exact.sort((a, b) => a.on.first - b.on.first);
  if (!earliest) return null;
  const differing = others.filter((other) => other.on.text !== earliest.on.text);
  return { fact: earliest, doubts: differing.map((other) => twoDates(earliest, other)) };
}

/** Whether `inner` says the same as `outer`, more exactly. */
function isWithin(inner: Fact, outer: Fact): boolean {
  return inner.on.text !== outer.on.text && inner.on.first >= outer.on.first && inner.on.last <= outer.on.last;
}

function twoDates(counted: Fact, other: Fact): string {
  const what = actInWords(counted.fact);
  const [first, second] = [recordedDateInWords(counted.on), recordedDateInWords(other.on)];
  return `More than one ${what} is on record, ${first} and ${second}: the earlier counts until one is corrected or a replacement is recorded.`;
}
