/** What comes of one limit of a duty, and what it is counted from. */
import type { Day } from '../calendar/day.ts';
import type { Duty, Limit, Reset } from '../rule/rule.ts';
import type { VesselEvent } from '../vessel/situation.ts';
import type { Fact, FactKind } from './fact.ts';
import { findItemKind } from './item-kind.ts';
import type { LastDone } from './last-done.ts';
import { limitInWords } from './limit-words.ts';
import type { CountedLimit, Missing, Window } from './obligation.ts';
import type { FactSetAside } from './unit-aboard.ts';
import type { Particulars } from './weigh-condition.ts';
import { actInWords, capacitiesInWords, capitalised, resetInWords, withArticle } from './words.ts';

/** What a duty is worked out from. `facts` are those of the unit aboard, in order of day. */
export type Grounds = Particulars & {
  readonly duty: Duty;
  readonly facts: readonly Fact[];
  readonly events: readonly VesselEvent[];
  readonly last: LastDone;
};

export type LimitCount = CountedLimit & {
  readonly source: Limit;
  /** Opens the sentence: "Serviced on 22 September 2025". */
  readonly basis: string;
  /** The spans in which the work counts as done on the day, where the limit itself has them. */
  readonly windows: readonly Window[];
  readonly assumed: readonly string[];
  readonly doubts: readonly string[];
  readonly missing: readonly Missing[];
  readonly setAside: readonly FactSetAside[];
  readonly alternatives: readonly CountedLimit[];
  /** The day from which its interval runs; absent where it counts none. */
  readonly countedFrom?: Day;
};

/** A limit that a missing fact keeps from being counted; the others are built on it. */
export function notCounted(source: Limit, grounds: Grounds, missing: Missing): LimitCount {
  return {
    source,
    limit: limitInWords(source, grounds.duty),
    on: null,
    factIds: [],
    basis: `${capitalised(nameMissing(missing, grounds))} is not on record`,
    windows: [],
    assumed: [],
    doubts: [],
    missing: [missing],
    setAside: [],
    alternatives: [],
  };
}

/** What is missing, to stand in a sentence: "the maker's interval". */
function named({ what }: Missing): string {
  return /^(the|how|what) /.test(what) ? what : `the ${what}`;
}

/** The same, but of an act that was done and does not count it is not said that it was not done. */
export function nameMissing(missing: Missing, grounds: Grounds): string {
  const [reset] = grounds.duty.resets;
  const done = grounds.last.setAside.length > 0 && missing.what === missingLast(grounds).what;
  return done && reset ? `${withArticle(resetInWords(reset))}${byWhom(reset)} that counts` : named(missing);
}

export function missingFact(kind: FactKind, grounds: Grounds): Missing {
  return { what: `the ${actInWords(kind)}`, whereFound: whereFound(kind, grounds) };
}

/** The act that the duty counts from, by whoever is asked to do it. */
export function missingLast(grounds: Grounds): Missing {
  const [reset] = grounds.duty.resets;
  if (!reset) return missingFact('installed', grounds);
  return { what: `the last ${resetInWords(reset)}${byWhom(reset)}`, whereFound: whereFound(reset.act, grounds) };
}

function byWhom({ by }: Reset): string {
  return by.length > 0 ? ` by ${capacitiesInWords(by)}` : '';
}

export function whereFound(kind: FactKind, grounds: Grounds): string {
  return findItemKind(grounds.kind)?.dates[kind] ?? 'the log book or an invoice';
}
