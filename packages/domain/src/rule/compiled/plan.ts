/** Rules made ready to run over columns: every question of a rule answered once that does not hang on an item. */
import type { OwnRuleVessels } from '../own-rule.ts';
import type { Duty, Limit, Rule } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import type { BulkDuty } from './compile-bulk.ts';
import type { ResetTable } from './resets.ts';

/** The day that a limit leads to for the item in hand: `NO_DAY` where a fact is missing, or `NOT_OWED`. */
export type LimitPlan = { readonly kind: Limit['kind']; readonly day: (aboard: Aboard) => number };

/** The parts of a duty that say something and move no day. Every other part has its place in the plan. */
type Said = 'inWords' | 'suspectFromAge';

export type DutyPlan = {
  readonly [Part in Exclude<keyof Duty, Said>]-?: unknown;
} & {
  readonly id: string;
  /** Its place among all duties of the plan. */
  readonly number: number;
  readonly action: { readonly isWithdrawal: boolean };
  /** Codes of kinds; `null`: all that the rule is for. */
  readonly onlyFor: readonly number[] | null;
  readonly appliesWhen: (aboard: Aboard) => boolean;
  readonly limits: readonly LimitPlan[];
  /** `limits` with the organisation's own interval in place of the published ones. */
  readonly ownLimits: readonly LimitPlan[];
  readonly cappedBy: readonly LimitPlan[];
  readonly noLaterThan: readonly LimitPlan[];
  readonly fallback: readonly LimitPlan[];
  readonly begins: LimitPlan | null;
  /** Around the due day; `null`: none. */
  readonly window: WindowPlan | null;
  /** How far the date could be put off, from the day that binds; `null`: not at all. */
  readonly extension: ((on: number, aboard: Aboard) => number) | null;
  readonly expires: boolean;
  readonly replaceBy: { readonly comesEarlier: boolean; readonly day: (on: number, aboard: Aboard) => number } | null;
  readonly resets: ResetTable;
  /** Where it can be dated for many items in one go. */
  readonly inBulk: BulkDuty | null;
};

export type WindowPlan = {
  readonly opens: (due: number) => number;
  readonly closes: (due: number) => number;
};

/** The same of a rule: what is only said is not here. */
type SaidOfRule = 'inWords' | 'source' | 'alsoAsks' | 'checks' | 'suspends';

export type RulePlan = {
  readonly [Part in Exclude<keyof Rule, SaidOfRule>]-?: unknown;
} & {
  readonly id: string;
  readonly kinds: Rule['kinds'];
  /** A bit for the scheme; all bits for one that always applies. */
  readonly scheme: number;
  /** Its place among the organisation's own rules; `NONE` for a published one. */
  readonly own: number;
  readonly weight: number;
  readonly isBinding: boolean;
  readonly appliesWhen: (aboard: Aboard) => boolean;
  readonly duties: readonly DutyPlan[];
  readonly withdraws: boolean;
};

export type Plan = {
  /** Of each kind, by its code. */
  readonly rulesOf: readonly (readonly RulePlan[])[];
  /** By number. */
  readonly duties: readonly { readonly rule: Rule; readonly duty: Duty }[];
  /** The organisation's own rules, and which vessels each bears on. */
  readonly own: readonly { readonly rule: Rule; readonly vessels: OwnRuleVessels }[];
  /** The number of a duty; `undefined` where the plan has none. */
  readonly numberOf: (ruleId: string, duty: string) => number | undefined;
  /** The values that conditions ask for, numbered; any other is nought. */
  readonly valueCode: (value: string | number | boolean) => number;
  /** The most obligations that one item can come to. */
  readonly most: number;
};
