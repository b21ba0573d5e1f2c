/**
 * What was seen, said and done about a finding, one entry each. Entries are only ever added; the finding
 * itself is what they come to, read from the first to the last.
 *
 * Days are ISO text here: entries are kept as they were written, and days in them are only compared.
 */
import type { Capacity } from '../item/fact.ts';
import type { Hazard, Seen, Trade, Urgency } from './codes.ts';

export type IsoDay = string;
export type Money = { readonly minor: number; readonly currency: string };

/** What it may cost, and who says so. */
export type Estimate = Money & { readonly author: string };

/** A remedial period that a rule or an authority sets: no decision of the organisation's may go past it. */
export type RemedialLimit = { readonly on: IsoDay; readonly source: string };

/** What is written of a finding, apart from how it stands. */
export type Particulars = {
  readonly zone: string;
  readonly itemId: string | null;
  readonly what: string;
  readonly hazard: Hazard;
  readonly trade: Trade | null;
  readonly estimate: Estimate | null;
  /** Who answers for getting it done. */
  readonly responsible: string | null;
  /** The rule that it breaks, as the catalogue knows it. */
  readonly ruleId: string | null;
  readonly limit: RemedialLimit | null;
};

/** When it must be dealt with; `urgentBy` is the surveyor's own day and goes with `within_weeks` only. */
export type UrgencySaid = { readonly urgency: Urgency; readonly urgentBy: IsoDay | null };

/** What shows it: in words, and as a file where there is one. */
export const EVIDENCE_KINDS = ['photograph', 'invoice', 'certificate', 'reading', 'looked'] as const;
export type Evidence = {
  readonly kind: (typeof EVIDENCE_KINDS)[number];
  readonly words: string;
  readonly evidenceId: string | null;
};

/** Whoever did the work: `null` where it was whoever wrote the entry. */
export type DoneBy = { readonly name: string; readonly capacity: Capacity; readonly certificate: string | null };

/** `visitId`: the survey visit that it was seen on; `null` where somebody saw it in passing. */
type Sight = { readonly visitId: string | null; readonly words: string | null; readonly evidence: readonly Evidence[] };

export type Step =
  | ({ readonly step: 'found' } & Sight & Particulars & UrgencySaid)
  | ({ readonly step: 'seen'; readonly seen: Seen; readonly said: UrgencySaid | null } & Sight)
  | {
      readonly step: 'amended';
      readonly change: Partial<Particulars>;
      readonly said: UrgencySaid | null;
      readonly reason: string | null;
    }
  | {
      readonly step: 'proposed';
      readonly work: string;
      readonly trade: Trade | null;
      readonly estimate: Estimate | null;
    }
  | {
      readonly step: 'planned';
      readonly work: string | null;
      readonly forDay: IsoDay | null;
      readonly trade: Trade | null;
      readonly responsible: string | null;
    }
  | { readonly step: 'begun'; readonly words: string | null }
  | {
      readonly step: 'reported_done';
      readonly work: string;
      readonly doneOn: IsoDay;
      readonly doneBy: DoneBy | null;
      readonly evidence: readonly Evidence[];
      readonly facts: readonly string[];
    }
  | { readonly step: 'sent_back'; readonly reason: string }
  | {
      readonly step: 'verified';
      readonly words: string | null;
      readonly evidence: readonly Evidence[];
      readonly independent: boolean;
    }
  | {
      readonly step: 'deferred';
      readonly until: IsoDay;
      readonly reviewOn: IsoDay;
      readonly responsible: string;
      readonly reason: string;
    }
  | { readonly step: 'accepted'; readonly reviewOn: IsoDay; readonly responsible: string; readonly reason: string }
  | {
      /** The owner of the vessel has said yes or no to what it may cost. It decides nothing by itself. */
      readonly step: 'owner_answered';
      readonly yes: boolean;
      readonly name: string;
      /** The words that were shown, and agreed to or not. */
      readonly offer: string;
      readonly words: string | null;
    }
  | { readonly step: 'entered_in_error'; readonly reason: string }
  | { readonly step: 'reopened'; readonly reason: string }
  | { readonly step: 'merged_into'; readonly findingId: string; readonly reason: string }
  | { readonly step: 'took_in'; readonly findingId: string }
  | { readonly step: 'split_off'; readonly findingId: string; readonly reason: string }
  | { readonly step: 'split_from'; readonly findingId: string };
export type StepCode = Step['step'];

/** Who wrote it and when; `on` is the day it speaks of, at the vessel's place. */
export type Entry = {
  readonly id: string;
  readonly by: string;
  readonly on: IsoDay;
  readonly recordedAt: string;
} & Step;
