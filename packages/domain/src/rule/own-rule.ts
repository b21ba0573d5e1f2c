/**
 * A rule that an organisation makes for itself: a deliberately small set of the shapes of `rule.ts`, in
 * versions. Each version says from which day it counts; rows are only added, so what applied then stays known.
 */
import type { Day } from '../calendar/day.ts';
import { isKnown } from '../item/facts-on-record.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import type { Cut } from '../item/unit-aboard.ts';
import type { VesselEventKind } from '../vessel/situation.ts';
import type { PeriodText, Reset, RULE_ACTIONS, Rule } from './rule.ts';
import type { SchemeId, Weight } from './scheme.ts';

/** What can stand behind it. Nobody makes law or a certificate's terms. */
export const OWN_RULE_WEIGHTS = ['own', 'insurer', 'maker', 'common_practice'] as const satisfies readonly Weight[];
export type OwnRuleWeight = (typeof OWN_RULE_WEIGHTS)[number];

export type OwnLimit =
  | {
      readonly kind: 'interval';
      readonly from: 'manufactured' | 'installed' | 'last_done';
      readonly plus: PeriodText;
    }
  | { readonly kind: 'printed_expiry' }
  | { readonly kind: 'running_hours'; readonly hours: number }
  /** The last act must lie no further than `within` before the event's start. */
  | { readonly kind: 'before_event'; readonly event: VesselEventKind; readonly within: PeriodText };

export type OwnRuleVessels =
  | { readonly which: 'all' }
  | { readonly which: 'under_scheme'; readonly scheme: SchemeId }
  | { readonly which: 'chosen'; readonly vesselIds: readonly string[] };

/** What one version lays down. */
export type OwnRuleDefinition = {
  readonly kinds: readonly ItemKindId[];
  readonly vessels: OwnRuleVessels;
  readonly action: { readonly kind: (typeof RULE_ACTIONS)[number]; readonly words: string };
  /** The rule as its makers put it, in full sentences. */
  readonly inWords: string;
  /** The earliest binds. */
  readonly limits: readonly OwnLimit[];
  /** Counted while it was never done, where the limits alone give no day. */
  readonly first?: { readonly from: 'manufactured' | 'installed'; readonly plus: PeriodText };
  readonly window?: { readonly before: PeriodText; readonly after: PeriodText };
  readonly resets: readonly Reset[];
  readonly weight: OwnRuleWeight;
};

/** Who laid it down, why, and where it stands in writing. */
export type OwnRuleGrounds = { readonly decidedBy: string; readonly reason: string; readonly document: string };

export type OwnRuleVersion = {
  readonly ruleId: string;
  /** From 1, in the order in which they were recorded. */
  readonly number: number;
  readonly takesEffectOn: Day;
  /** RFC 3339. */
  readonly recordedAt: string;
  readonly vessels: OwnRuleVessels;
  /** `null`: from that day on there is no such rule. */
  readonly rule: Rule | null;
};

/**
 * Of each rule the version in force on the day asked, by what was known then: the last recorded of those that
 * have taken effect. It says how things are from its day on, so it also stands in for what was planned before.
 */
export function ownRulesInForce<
  Version extends Pick<OwnRuleVersion, 'ruleId' | 'number' | 'takesEffectOn' | 'recordedAt'>,
>(versions: readonly Version[], { asOf, knownAt }: Cut): readonly Version[] {
  const day = asOf ?? Number.POSITIVE_INFINITY;
  const begun = versions.filter((each) => each.takesEffectOn <= day && isKnown(each.recordedAt, knownAt));
  const last = new Map<string, Version>();
  for (const each of begun) if (each.number > (last.get(each.ruleId)?.number ?? 0)) last.set(each.ruleId, each);
  return [...last.values()].sort((a, b) => (a.ruleId < b.ruleId ? -1 : 1));
}

type OfVessel = {
  readonly id?: string;
  readonly schemes: readonly SchemeId[];
  readonly ownRules?: readonly OwnRuleVersion[];
};

/** The organisation's own rules that bear on a kind of thing aboard her. */
export function ownRulesFor(kind: ItemKindId, vessel: OfVessel, cut: Cut): readonly Rule[] {
  const { ownRules = [] } = vessel;
  if (ownRules.length === 0) return [];
  return ownRulesInForce(ownRules, cut).flatMap(({ rule, vessels }) =>
    rule?.kinds.includes(kind) && bearsOn(vessels, vessel) ? [rule] : [],
  );
}

/** Whether she is one of them. */
export function bearsOn(vessels: OwnRuleVessels, { id, schemes }: Omit<OfVessel, 'ownRules'>): boolean {
  switch (vessels.which) {
    case 'all':
      return true;
    case 'under_scheme':
      return schemes.includes(vessels.scheme);
    case 'chosen':
      return id !== undefined && vessels.vesselIds.includes(id);
  }
}
