/**
 * A safety notice: its maker, or an authority, says what is wrong with certain things, which ones, and what to
 * do about them. As a value, from what somebody entered.
 */
import type { Day } from '../calendar/day.ts';
import { isKnown } from '../item/facts-on-record.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import type { Cut } from '../item/unit-aboard.ts';
import type { ActionKind } from '../rule/rule.ts';
import type { Weight } from '../rule/scheme.ts';
import type { SerialRange } from './serial-range.ts';

/** What a notice asks to be done with the thing. */
export const NOTICE_ACTIONS = ['stop_using', 'inspect', 'return', 'replace'] as const satisfies readonly ActionKind[];
export type NoticeAction = (typeof NOTICE_ACTIONS)[number];

/** `law`: an authority has ordered it. */
export const NOTICE_WEIGHTS = ['maker', 'law'] as const satisfies readonly Weight[];
export type NoticeWeight = (typeof NOTICE_WEIGHTS)[number];

export type Deadline =
  | { readonly kind: 'on'; readonly on: Day }
  | { readonly kind: 'days_after_issue'; readonly days: number }
  | { readonly kind: 'before_next_use' };

/** Both ends inclusive; `null`: open. */
export type ManufacturedBetween = { readonly from: Day | null; readonly to: Day | null };

export type SafetyNotice = {
  readonly id: string;
  readonly title: string;
  /** Who published it: the maker, or the authority. */
  readonly publisher: string;
  readonly reference: string | null;
  readonly issuedOn: Day;
  /** Where it can be read: an address, a document, or both. */
  readonly address: string | null;
  readonly document: string | null;
  readonly kinds: readonly ItemKindId[];
  /** Any of them; none: whoever made it. */
  readonly makers: readonly string[];
  /** Any of them; none: every model. */
  readonly models: readonly string[];
  /** Any of them; none: every serial number. */
  readonly serials: readonly SerialRange[];
  readonly manufactured: ManufacturedBetween | null;
  /** What can happen. */
  readonly hazard: string;
  readonly action: { readonly kind: NoticeAction; readonly words: string };
  readonly deadline: Deadline;
  readonly weight: NoticeWeight;
  /** RFC 3339. */
  readonly recordedAt: string;
  /** The first day on which it asks nothing more, and when we learned it. */
  readonly withdrawn: { readonly on: Day; readonly recordedAt: string } | null;
};

/** Whether it asks anything as at the day, by what was known. */
export function isOpenNotice({ issuedOn, recordedAt, withdrawn }: SafetyNotice, { asOf, knownAt }: Cut): boolean {
  const day = asOf ?? Number.POSITIVE_INFINITY;
  const isOver = withdrawn !== null && withdrawn.on <= day && isKnown(withdrawn.recordedAt, knownAt);
  return issuedOn <= day && isKnown(recordedAt, knownAt) && !isOver;
}

/**
 * The last day on which nothing is wrong yet. What is asked before the next use is asked from the day of the
 * notice on, as every day after it can be one of use: house convention, no source.
 */
export function deadlineDay({ deadline, issuedOn }: Pick<SafetyNotice, 'deadline' | 'issuedOn'>): Day {
  switch (deadline.kind) {
    case 'on':
      return deadline.on;
    case 'days_after_issue':
      return (issuedOn + deadline.days) as Day;
    case 'before_next_use':
      return issuedOn;
  }
}

const PREFIX = 'notice:';

/** What stands for a rule's id in the obligations that a notice makes. */
export const ruleIdOfNotice = (noticeId: string): string => `${PREFIX}${noticeId}`;

/** What asks for it: a rule, or a notice. */
export type DueSource = 'obligation' | 'safety_notice';

export const sourceOf = (ruleId: string): DueSource => (ruleId.startsWith(PREFIX) ? 'safety_notice' : 'obligation');
