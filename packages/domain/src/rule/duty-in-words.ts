/** How the date of one duty comes about, for its page, in full sentences. Each part of a duty has one entry, so a new part without one does not compile. */
import { periodInWords } from '../calendar/words.ts';
import { findItemKind } from '../item/item-kind.ts';
import { limitInWords } from '../item/limit-words.ts';
import { conditionInWords } from '../item/weigh-condition.ts';
import { actInWords, capacitiesInWords, eventInWords } from '../item/words.ts';
import { detailsOfInterval, detailsOfLimit } from './limit-details.ts';
import type { Applies, Duty, Limit, Reset } from './rule.ts';

/** Without what resets it. */
export function dutyInWords(duty: Duty): readonly string[] {
  return (Object.keys(PARTS) as (keyof Duty)[]).flatMap((part) => linesOfPart(part, duty));
}

export function resetsInWords({ resets }: Pick<Duty, 'resets'>): readonly string[] {
  if (resets.length === 0) return [];
  return [`The clock starts anew with ${[...new Set(resets.map(resetLine))].join('; or ')}.`];
}

/** What has to be so for it to apply, and what holds while that is not on record. */
export function appliesInWords({ condition, ifNotRecorded }: Applies): string {
  const otherwise = ifNotRecorded === 'applies' ? 'it is taken to apply' : 'it does not apply';
  return `Applies where ${conditionInWords(condition)}; while that is not on record, ${otherwise}.`;
}

type PartWriters = {
  readonly [Part in keyof Duty]-?: (part: NonNullable<Duty[Part]>, duty: Duty) => readonly string[];
};

const SAID_APART = () => [];

const PARTS: PartWriters = {
  id: SAID_APART,
  action: SAID_APART,
  inWords: SAID_APART,
  onlyFor: (kinds) => [`Only for ${kinds.map((kind) => findItemKind(kind)?.name ?? kind).join(', ')}.`],
  appliesWhen: (conditions) => conditions.map(appliesInWords),
  limits: (limits, duty) => limitLines(limits.length > 1 ? 'Whichever is first' : 'Due', limits, duty),
  cappedBy: (limits, duty) => limitLines('Only ever shortened by', limits, duty),
  noLaterThan: (limits, duty) => limitLines('Nothing is overdue later than', limits, duty),
  fallback: (limits, duty) => limitLines('Where that gives no day', limits, duty),
  begins: ({ from, plus }, duty) => [
    `Begins ${limitInWords({ kind: 'after', from, plus }, duty)}, and has no date before.`,
    ...detailsOfInterval(plus),
  ],
  window: ({ before, after, keepsDay }, { limits }) => [
    `Done from ${periodInWords(before)} before the day to ${periodInWords(after)} after it, it is done in time${nextFrom(keepsDay, limits)}.`,
  ],
  extension: (extension) => {
    switch (extension.kind) {
      case 'authority_record':
        return [`An authority may extend it to ${periodInWords(extension.max)}: counts only when that is on record.`];
      case 'next_event':
        return [
          `May be put off to the next ${eventInWords(extension.event)} within ${periodInWords(extension.within)}: counts only when that is on record.`,
        ];
    }
  },
  expires: () => ['It is itself out of date after the day.'],
  replaceBy: ({ kind, event }) => [
    kind === 'first_event_after_expiry'
      ? `To be replaced at the first ${eventInWords(event)} after it ran out; that postpones nothing.`
      : `To be replaced at the last ${eventInWords(event)} before it runs out.`,
  ],
  suspectFromAge: (age) => [`Suspect from ${periodInWords(age)} of age, although not yet due.`],
  resets: SAID_APART,
};

/** A certificate says itself what the next one counts from. */
function nextFrom(keepsDay: true | undefined, limits: readonly Limit[]): string {
  if (keepsDay) return ' and counts as done on the day: the next is counted from there';
  return limits.some(({ kind }) => kind === 'after') ? '; the next is counted from the act itself' : '';
}

function linesOfPart<Part extends keyof Duty>(part: Part, duty: Duty): readonly string[] {
  const value = duty[part];
  if (value === undefined) return [];
  return (PARTS[part] as (value: Duty[Part], duty: Duty) => readonly string[])(value, duty);
}

function limitLines(opening: string, limits: readonly Limit[], duty: Duty): readonly string[] {
  if (limits.length === 0) return [];
  const details = limits.flatMap(detailsOfLimit);
  return [`${opening}: ${limits.map((limit) => limitInWords(limit, duty)).join('; ')}.`, ...new Set(details)];
}

function resetLine({ act, tests, by }: Reset): string {
  const what = tests ? tests.map((test) => actInWords(act, test)).join(' or ') : actInWords(act);
  return `the ${what}, by ${by.length === 0 ? 'anybody' : capacitiesInWords(by)}`;
}
