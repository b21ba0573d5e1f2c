/** How one thing stands under one notice, as at a day and as known at an instant. */
import { type Day, formatDay } from '../calendar/day.ts';
import { dateOnRecord } from '../item/date-on-record.ts';
import type { Fact } from '../item/fact.ts';
import { dayOfFact } from '../item/facts-on-record.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import type { Cut } from '../item/unit-aboard.ts';
import { answersOnRecord, type NoticeAnswer, settledBy } from './answer.ts';
import { type Match, matchNotice, type Thing } from './match-notice.ts';
import { isOpenNotice, type SafetyNotice } from './notice.ts';
import { type PlateHistory, plateAt } from './plate.ts';

/** The notices that may bear on an item, each with what was answered, and what its plate says. */
export type UnderNotices = {
  readonly plate: PlateHistory;
  readonly notices: readonly { readonly notice: SafetyNotice; readonly answers: readonly NoticeAnswer[] }[];
};

/** The unit aboard: its facts only. */
export type UnitFacts = { readonly kind: ItemKindId; readonly facts: readonly Fact[] };

export type NoticeStanding =
  | { readonly kind: 'settled'; readonly by: NoticeAnswer }
  | { readonly kind: 'not_affected'; readonly match: Extract<Match, { kind: 'not_affected' }> }
  | {
      readonly kind: 'open';
      readonly match: Exclude<Match, { kind: 'not_affected' }>;
      /** Of the unit aboard or an earlier one, the latest last. */
      readonly answers: readonly NoticeAnswer[];
      /** The day on which the unit came in place of another. */
      readonly unitSince: Day | null;
      /** What is on record of the serial number was written before that day, so it is not taken to be the unit's. */
      readonly serialOfEarlier: string | null;
    };

/** `null`: the notice asks nothing then. */
export function judgeItem(
  notice: SafetyNotice,
  answers: readonly NoticeAnswer[],
  plate: PlateHistory,
  unit: UnitFacts,
  cut: Cut,
): NoticeStanding | null {
  if (!isOpenNotice(notice, cut)) return null;
  const { thing, unitSince, serialOfEarlier } = thingAboard(plate, unit, cut);
  const held = answersOnRecord(answers, cut);
  const by = settledBy(held, { serialNumber: thing.plate.serialNumber, since: unitSince });
  if (by) return { kind: 'settled', by };
  const match = matchNotice(notice, thing);
  if (match.kind === 'not_affected') return { kind: 'not_affected', match };
  return { kind: 'open', match, answers: held, unitSince, serialOfEarlier };
}

type Aboard = {
  readonly thing: Thing;
  readonly unitSince: Day | null;
  readonly serialOfEarlier: string | null;
};

/** A serial number that was written down before the unit came is the one of what it replaced. */
function thingAboard(history: PlateHistory, { kind, facts }: UnitFacts, cut: Cut): Aboard {
  const { since, ...plate } = plateAt(history, cut);
  const came = facts.findLast(({ fact, outcome }) => fact === 'replaced' && outcome === 'passed');
  const unitSince = came ? dayOfFact(came) : null;
  const isOlder = unitSince !== null && since.slice(0, 10) < formatDay(unitSince);
  const manufactured = dateOnRecord(facts, ['manufactured'])?.fact.on ?? null;
  return {
    thing: { kind, manufactured, plate: isOlder ? { ...plate, serialNumber: null } : plate },
    unitSince,
    serialOfEarlier: isOlder ? plate.serialNumber : null,
  };
}
