/** Writes a statement the way somebody would have entered it. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import type { DoneBy, FactKind } from '@garboard/domain/item/fact.ts';
import { chanceOf, type Logbook, learnedFrom } from './logbook.ts';
import type { FactPlan } from './plan.ts';

export type Precision = 'day' | 'month' | 'year';
type Plate = 'manufactured' | 'printed_expiry';
type Details = Partial<Omit<FactPlan, 'fact'>>;

/**
 * Something done on a day. What was done before the vessel was on the register was entered with her;
 * the rest within the week, as paper reaches the office.
 */
export function act(log: Logbook, fact: FactKind, on: Day, details: Details = {}): FactPlan {
  const lag = chanceOf(log, `${fact} ${on}`).between(0, 5);
  return { ...BLANK, fact, on: formatDay(on), learnedOn: learnedFrom(log, addDays(on, lag)), ...details };
}

/** A date read on the thing itself: a plate, a stamp, a print. `readOn` is the day somebody looked. */
export function plate(fact: Plate, on: string, readOn: Day, details: Details = {}): FactPlan {
  return { ...BLANK, evidence: 'printed', fact, on, readOn: formatDay(readOn), learnedOn: readOn, ...details };
}

/** The mark of manufacture, read when the vessel was entered, or when the thing came aboard after that. */
export function stamp(log: Logbook, madeOn: Day, precision: Precision = 'month'): FactPlan {
  const seenOn = learnedFrom(log, addDays(madeOn, 35));
  return plate('manufactured', dateText(madeOn, precision), seenOn, { evidence: 'stamped' });
}

/** Read on the new unit on the day it came, and entered with its invoice: before that, it would speak of the old one. */
export function plateOfNew(replaced: FactPlan, fact: Plate, on: string, details: Details = {}): FactPlan {
  return { ...BLANK, evidence: 'printed', fact, on, readOn: replaced.on, learnedOn: replaced.learnedOn, ...details };
}

/** As somebody remembers it: `2024-03-18`, `2024-03` or `2024`. */
export function dateText(day: Day, precision: Precision): string {
  return formatDay(day).slice(0, LENGTH[precision]);
}

/** The professional's paper, with a number on it. */
export function certified(by: DoneBy, on: Day): Pick<FactPlan, 'doneBy' | 'evidence'> {
  return { doneBy: { ...by, certificate: `${initials(by)}-${on % 10_000}` }, evidence: 'certificate' };
}

const initials = ({ name = 'No' }: DoneBy) => name.replace(/[^\p{Lu}]/gu, '').slice(0, 2);

const LENGTH: Readonly<Record<Precision, number>> = { day: 10, month: 7, year: 4 };

const BLANK = {
  outcome: 'passed',
  test: null,
  doneBy: null,
  evidence: 'record',
  until: null,
  reading: null,
  readOn: null,
  note: null,
} as const;
