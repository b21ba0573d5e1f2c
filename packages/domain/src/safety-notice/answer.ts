/**
 * What was answered to a notice, item by item. Answers are only ever added: a wrong one is struck out by a
 * later one that names it.
 */
import type { Day } from '../calendar/day.ts';
import type { DoneBy, Evidence } from '../item/fact.ts';
import { isKnown } from '../item/facts-on-record.ts';
import type { Cut } from '../item/unit-aboard.ts';
import { squeezed } from './likeness.ts';

/**
 * `done`: what the notice asks. `not_affected`: somebody looked. `deferred`: put off by somebody named; it moves no
 * date. `reopened`: an answer given by mistake is struck out, and nothing stands in for it.
 */
export const NOTICE_ANSWERS = ['done', 'not_affected', 'deferred', 'reopened'] as const;
export type NoticeAnswerKind = (typeof NOTICE_ANSWERS)[number];

export type NoticeAnswer = {
  readonly id: string;
  readonly answer: NoticeAnswerKind;
  /** The day on which it was done, looked at or decided. */
  readonly on: Day;
  readonly doneBy: DoneBy;
  readonly evidence: Evidence | null;
  /** A work order, an invoice, the maker's own number. */
  readonly reference: string | null;
  readonly note: string | null;
  /** `deferred`: the day on which it is looked at again. */
  readonly until: Day | null;
  /** As read on the thing when it was answered. */
  readonly serialRead: string | null;
  /** What was on record once it was answered: another number later is another thing. */
  readonly serialThen: string | null;
  /** RFC 3339. */
  readonly recordedAt: string;
  readonly corrects: string | null;
};

/** Those that hold, in order of day; what a known one names is struck out. */
export function answersOnRecord(
  answers: readonly NoticeAnswer[],
  { asOf, knownAt }: Cut = {},
): readonly NoticeAnswer[] {
  const known = answers.filter(({ recordedAt }) => isKnown(recordedAt, knownAt));
  const struck = new Set(known.map(({ corrects }) => corrects));
  return known
    .filter(({ id, on }) => !struck.has(id) && on <= (asOf ?? Number.POSITIVE_INFINITY))
    .sort((a, b) => a.on - b.on || Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || (a.id < b.id ? -1 : 1));
}

/** What is aboard now: its number on record, and the day it came in place of another; `null`: it was always there. */
export type UnitNow = { readonly serialNumber: string | null; readonly since: Day | null };

/** The answer that settles it for what is aboard; one that was given of an earlier unit does not. */
export function settledBy(answers: readonly NoticeAnswer[], unit: UnitNow): NoticeAnswer | undefined {
  return answers.findLast((each) => (each.answer === 'done' || each.answer === 'not_affected') && isOfUnit(each, unit));
}

export function isOfUnit({ on, serialThen }: NoticeAnswer, { serialNumber, since }: UnitNow): boolean {
  const isOther = serialThen !== null && serialNumber !== null && squeezed(serialThen) !== squeezed(serialNumber);
  return !isOther && (since === null || since <= on);
}
