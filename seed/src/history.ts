/** Days on which things were done, counted back from how they stand today. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addDays, addMonths } from '@garboard/domain/calendar/day.ts';
import type { Fortune, Logbook } from './logbook.ts';
import type { Random } from './random.ts';

/** How a thing stands today, and the chance that its past is drawn from. */
export type Lot = { readonly log: Logbook; readonly random: Random; readonly fortune: Fortune };

/** Each time a thing of `months` of life was fitted, oldest first. The first is the builder's. */
export function fittings(lot: Lot, months: number): readonly [Day, ...Day[]] {
  const { commissionedOn } = lot.log;
  const renewals: Day[] = [];
  let day = addMonths(endOfLife(lot, months), -months);
  while (renewals.length < lot.log.sheets && day > addMonths(commissionedOn, 12)) {
    renewals.unshift(day);
    day = addMonths(day, -months - lot.random.between(-6, 10));
  }
  return [commissionedOn, ...renewals];
}

function endOfLife({ log: { today }, random, fortune }: Lot, months: number): Day {
  switch (fortune) {
    case 'late':
      return addDays(today, -random.pick([3, 11, 24, 40, 68, 110, 190, 310]));
    case 'soon':
      return addDays(today, random.between(4, 27));
    case 'in_date':
    case 'unknown':
      return addMonths(addDays(today, random.between(40, 70)), random.between(0, Math.max(0, months - 4)));
  }
}

/** The days of something done about every `months`, oldest first, and none before `since`. */
export function rounds(lot: Lot, months: number, since: Day, kept = lot.log.sheets): readonly Day[] {
  const last = lastRound(lot, months);
  const days = [last];
  while (days.length < kept) days.unshift(addDays(addMonths(last, -months * days.length), lot.random.between(-9, 9)));
  return days.filter((day) => day > since && day < lot.log.today);
}

function lastRound({ log, random, fortune }: Lot, months: number): Day {
  const monthsBefore = (day: Day) => addMonths(day, -months);
  switch (fortune) {
    case 'late':
      return monthsBefore(addDays(log.today, -random.pick([2, 6, 13, 21, 34, 55, 89, 144])));
    case 'soon':
      return monthsBefore(addDays(log.today, random.between(3, 26)));
    case 'in_date':
    case 'unknown':
      return addMonths(addDays(log.careOn, random.between(-8, 8)), months < 24 ? 0 : -random.pick([0, 12]));
  }
}
