/** What a rule makes of an item's facts: a date, or what is missing, and in both cases why. */
import type { Day } from '../calendar/day.ts';
import type { Action, Source } from '../rule/rule.ts';
import type { SchemeId, Weight } from '../rule/scheme.ts';
import type { Capacity, FactKind, TestKind } from './fact.ts';

export type Window = { readonly opens: Day; readonly closes: Day };

/** A date is missing: which, and where it is usually found. */
export type Missing = { readonly what: string; readonly whereFound: string };

export type DueOutcome =
  | {
      readonly kind: 'dated';
      /** The first day on which it is called due: `dueOn` less its lead time. */
      readonly dueFrom: Day;
      readonly dueOn: Day;
      /** The last day on which nothing is wrong yet. */
      readonly overdueAfter: Day;
      readonly expiresOn?: Day;
      /** By when an expired thing must be replaced; later than `overdueAfter`, and never postpones it. */
      readonly replaceBy?: Day;
      /** How far an authority could extend it. Counts only when the permission is on record. */
      readonly latestPermittedOn?: Day;
      readonly windows: readonly Window[];
    }
  | { readonly kind: 'undated'; readonly missing: readonly Missing[] };

/** One limit of the rule and what came of it: a day, or `null` where a date is missing. */
export type CountedLimit = { readonly limit: string; readonly on: Day | null; readonly factIds: readonly string[] };

/** A fact that was looked at and did not count: a failed test, an owner's look, a plate of the old unit. */
export type SetAside = { readonly factId: string; readonly why: string };

/**
 * An act that would move the date. `plus` is ISO 8601, counted from the day it is done; `null` when the act
 * alone does not decide the next date: a new print, a plan, its age or its particulars do too. `keeps`: done
 * in this window it counts as done on the day.
 */
export type Remedy = {
  readonly act: FactKind;
  readonly test?: TestKind;
  readonly by: readonly Capacity[];
  readonly plus: string | null;
  readonly keeps?: Window & { readonly on: Day };
};

/** A span of days, `until` the last of them, in which the rule named suspends the duty; `null`: still open. */
export type Suspended = { readonly ruleId: string; readonly from: Day; readonly until: Day | null };

export type Explanation = {
  /** One sentence in plain words. */
  readonly sentence: string;
  readonly source: Source;
  readonly binds: CountedLimit | null;
  readonly alsoCounted: readonly CountedLimit[];
  readonly setAside: readonly SetAside[];
  readonly assumed: readonly string[];
  readonly doubts: readonly string[];
  readonly missing: readonly Missing[];
  readonly wouldChangeIt: readonly Remedy[];
  /** Absent: never. The dates and the standing stay as they are worked out; a suspended duty is not thereby done. */
  readonly suspended?: readonly Suspended[];
  /** The organisation's own figure that it was worked out with. */
  readonly overrideId?: string;
  /** The safety notice that asks it, and whether what is on record is enough to say that it covers the thing. */
  readonly notice?: { readonly id: string; readonly match: 'affected' | 'may_be_affected' };
};

export type Obligation = {
  readonly ruleId: string;
  /**
   * Which of the rule's duties: a rule may ask for a yearly service and a five-yearly one. With `.tightened` an
   * organisation's own figure beside a duty that binds.
   */
  readonly duty: string;
  readonly scheme: SchemeId;
  readonly weight: Weight;
  readonly action: Action;
  readonly outcome: DueOutcome;
  readonly explanation: Explanation;
};
