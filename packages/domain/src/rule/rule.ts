/**
 * How facts become a due date: the shape of a rule.
 *
 * A rule is data. It has duties, each a named thing to do with the limits that compete for its date
 * (the earliest binds), and checks, which put a doubt on what is recorded. Every varying part is a
 * union told apart by `kind`; the engine switches over it without a default, and `rule-reads.ts` has an
 * entry for each part, so that a shape nobody handles does not compile. Where a clause needs more, the
 * new shape is one more member of a union.
 */
import type { AttributeId } from '../item/attribute.ts';
import type { Capacity, FactKind, TestKind } from '../item/fact.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import type { Use, VesselEventKind } from '../vessel/situation.ts';
import type { AnniversaryWindow, CertificateTerms } from './certificate-terms.ts';
import type { SchemeId, Weight } from './scheme.ts';

/** How far the figure was checked. Shown wherever the date shows. */
export type SourceStatus = 'read' | 'second_hand' | 'memory' | 'common_practice';

export type Source = {
  readonly publication: string | null;
  readonly clause: string | null;
  readonly address: string | null;
  readonly status: SourceStatus;
  /** Which part of a rule that was read is nevertheless from memory. */
  readonly fromMemory?: string;
};

/** What a rule can ask. */
export const RULE_ACTIONS = ['service', 'inspect', 'test', 'replace', 'withdraw', 'overhaul'] as const;
/** The others are a safety notice's. */
export const ACTIONS = [...RULE_ACTIONS, 'stop_using', 'return'] as const;
export type ActionKind = (typeof ACTIONS)[number];

/** The named thing that somebody must do: `words` as an instruction ("Service at an approved station"). */
export type Action = { readonly kind: ActionKind; readonly words: string };

/** ISO 8601, years to days: `P42M`. */
export type PeriodText = `P${string}`;

/** Something about the item that can hold, not hold, or not be recorded. */
export type Condition =
  | { readonly kind: 'kind_is'; readonly kinds: readonly ItemKindId[] }
  | { readonly kind: 'attribute_is'; readonly attribute: AttributeId; readonly value: string | boolean }
  | { readonly kind: 'attribute_below'; readonly attribute: AttributeId; readonly below: number }
  /** The date attribute lies on or after the day that the longer interval would lead to. */
  | { readonly kind: 'valid_through_next'; readonly attribute: AttributeId }
  /** Counted from manufacture, both on the day it starts from and on the day it would lead to. */
  | { readonly kind: 'younger_than'; readonly age: PeriodText };

export type IntervalOption = {
  readonly period: PeriodText;
  readonly all: readonly Condition[];
  readonly fromMemory?: true;
};

export type Interval =
  | { readonly kind: 'fixed'; readonly period: PeriodText }
  /** Somebody's own figure in months; without it `otherwise`, and without that no date. */
  | { readonly kind: 'own_figure'; readonly attribute: AttributeId; readonly otherwise?: PeriodText }
  /**
   * The first option whose conditions all hold: written longest first, so that what is not recorded
   * shortens. The last one has no conditions.
   */
  | { readonly kind: 'by_condition'; readonly options: readonly [...IntervalOption[], IntervalOption] }
  /** `period` at first, shorter from each age on. */
  | {
      readonly kind: 'by_age';
      readonly period: PeriodText;
      readonly bands: readonly { readonly fromAge: PeriodText; readonly period: PeriodText }[];
    };

/**
 * What an interval counts from. `last_done`: the last act that resets this duty. `first_failed`: the first
 * time since then that it was done and did not pass; while there is none, nothing is owed.
 */
export type Start = 'manufactured' | 'installed' | 'last_done' | 'first_failed';

/**
 * Whether the clause counts from day to day, to the end of the month or year it leads to, or as a period
 * that *begins with* the day and so ends the day before the corresponding one.
 */
export type Counting = 'days' | 'whole_months' | 'whole_years' | 'beginning_with';

export type Limit =
  | {
      readonly kind: 'after';
      readonly from: Start;
      readonly plus: Interval;
      readonly counting?: Counting;
      readonly fromMemory?: true;
      /** Our own reading where the clause is silent; said in the explanation. */
      readonly reading?: string;
    }
  /** `renewedBy`: printed on a part that this act of the duty renews, so that an earlier print no longer counts. */
  | { readonly kind: 'printed'; readonly renewedBy?: TestKind }
  /** A date that somebody gives as an attribute, as it stands or with a period added. */
  | { readonly kind: 'given'; readonly attribute: AttributeId; readonly plus?: PeriodText }
  | { readonly kind: 'next_event'; readonly event: VesselEventKind }
  /** The last day of the certificate in force. */
  | { readonly kind: 'certificate_expiry'; readonly terms: CertificateTerms }
  /**
   * The next anniversary of the certificate in force, whenever the last survey was done. `endorsed`: a
   * date attribute with the anniversary that stands on the certificate, which goes before the one worked out.
   */
  | {
      readonly kind: 'anniversary';
      readonly terms: CertificateTerms;
      readonly of: 'first_day' | 'expiry';
      readonly window: AnniversaryWindow;
      readonly endorsed?: AttributeId;
    }
  /** Once in the life of a certificate, at one of these anniversaries: each has its window, the last one binds. */
  | {
      readonly kind: 'one_of_anniversaries';
      readonly terms: CertificateTerms;
      /** Ascending. */
      readonly numbers: readonly [number, ...number[]];
      readonly window: AnniversaryWindow;
    }
  /** Once in the life of a certificate, within a period that begins with the survey that began it. */
  | { readonly kind: 'once_in_certificate'; readonly terms: CertificateTerms; readonly within: PeriodText }
  /** The next anniversary of a date that somebody gives as an attribute. */
  | { readonly kind: 'given_anniversary'; readonly attribute: AttributeId; readonly window: AnniversaryWindow }
  /** Hours run since the last act, projected from what the meter read: somebody's own figure, else `otherwise`. */
  | { readonly kind: 'running_hours'; readonly attribute: AttributeId; readonly otherwise?: number }
  /** The same with the figure in the rule itself: an organisation's own. */
  | { readonly kind: 'running_hours'; readonly hours: number }
  /** Counted back: the last act must lie no further than this before the event's start. */
  | { readonly kind: 'before_event'; readonly event: VesselEventKind; readonly within: PeriodText }
  /** At once, when one of these comes after the last act and so voids it; while none has, nothing is owed. */
  | { readonly kind: 'triggered'; readonly events: readonly VesselEventKind[]; readonly facts: readonly FactKind[] }
  /** The day that somebody set when the act did not pass; while it has passed, nothing is owed. */
  | { readonly kind: 'deadline_set' };

/** Grace that never counts by itself: how far the date could be put off, and what it takes. */
export type Extension =
  | { readonly kind: 'authority_record'; readonly max: PeriodText }
  | { readonly kind: 'next_event'; readonly event: VesselEventKind; readonly within: PeriodText };

/** By when a thing with an expiry must be replaced, where that is another day than the expiry. */
export type ReplaceBy =
  | { readonly kind: 'first_event_after_expiry'; readonly event: VesselEventKind }
  /** The last such event before the expiry, when the next one comes too late. */
  | { readonly kind: 'last_event_before_expiry'; readonly event: VesselEventKind };

/** An act that starts the duty's clock anew. No `tests`: whichever. `by` empty: anybody. */
export type Reset = {
  readonly act: FactKind;
  readonly tests?: readonly TestKind[];
  readonly by: readonly Capacity[];
};

export type Duty = {
  /** Unique within the rule: `service`, `hydrostatic_test`. */
  readonly id: string;
  readonly action: Action;
  /** The clause in plain words, to open a sentence: "A liferaft is serviced at intervals of not more than 12 months". */
  readonly inWords: string;
  readonly onlyFor?: readonly ItemKindId[];
  readonly appliesWhen?: readonly Applies[];
  readonly limits: readonly Limit[];
  /** They only shorten: counted beside one of `limits`, never instead of it, and not missed. */
  readonly cappedBy?: readonly Limit[];
  /** They close the window: nothing is overdue later than the earliest of them. */
  readonly noLaterThan?: readonly Limit[];
  /** Counted only when none of `limits` gives a day. */
  readonly fallback?: readonly Limit[];
  /** The duty begins then and has no date before; with nothing done yet, that is the date. */
  readonly begins?: { readonly from: 'manufactured' | 'installed'; readonly plus: Interval };
  /** `keepsDay`: what is done inside it counts as done on the due day, so the next is counted from there. */
  readonly window?: { readonly before: PeriodText; readonly after: PeriodText; readonly keepsDay?: true };
  readonly extension?: Extension;
  /** What is dated is itself out of date after the day: a flare, not a service. */
  readonly expires?: true;
  readonly replaceBy?: ReplaceBy;
  /** From this age, counted from manufacture, the thing is suspect although not yet due. */
  readonly suspectFromAge?: PeriodText;
  readonly resets: readonly Reset[];
};

/** No date of its own: a doubt on what is recorded. `inWords` stands inside a sentence. */
export type Check =
  | {
      readonly kind: 'stamp_not_after';
      readonly from: 'manufactured';
      readonly plus: PeriodText;
      readonly inWords: string;
    }
  /** Said of a thing to which no rule gives a date. */
  | { readonly kind: 'no_date'; readonly inWords: string };

/**
 * While the vessel is so, every duty of the rule's scheme is suspended: the clocks run on, and what fell due
 * meanwhile must be done before she returns to service.
 */
export type Suspension = { readonly use: Use; readonly dismantled: boolean; readonly inWords: string };

/** A condition for the whole rule, and what holds while it is not recorded. */
export type Applies = { readonly condition: Condition; readonly ifNotRecorded: 'applies' | 'does_not_apply' };

export type Rule = {
  readonly id: string;
  readonly scheme: SchemeId;
  readonly weight: Weight;
  readonly kinds: readonly ItemKindId[];
  readonly appliesWhen?: readonly Applies[];
  /** The whole rule for a page, in full sentences. */
  readonly inWords: string;
  readonly source: Source;
  /** What the clause asks besides, and is not worked out here. */
  readonly alsoAsks?: readonly string[];
  readonly duties: readonly Duty[];
  readonly checks: readonly Check[];
  readonly suspends?: Suspension;
};
