/** Anniversaries and their windows: days alone, always counted from the same first day. */
import type { Day } from '../calendar/day.ts';
import { addDays, addMonths } from '../calendar/day.ts';
import { addPeriod, endOfPeriodBeginningWith, type Period } from '../calendar/period.ts';
import { periodOf } from '../calendar/words.ts';
import type { AnniversaryWindow } from '../rule/certificate-terms.ts';
import type { Window } from './obligation.ts';

export type Anniversary = {
  readonly on: Day;
  readonly window: Window;
  /** A survey before this day is too early to count for it. */
  readonly countsFrom: Day;
};

/** The anniversary so many years after `base`, or before it. */
export function anniversaryOf(base: Day, years: number, window: AnniversaryWindow): Anniversary {
  const on = addMonths(base, 12 * years);
  const opens = window.before === undefined ? on : shifted(base, years, periodOf(window.before), -1);
  const closes = closeOf(base, years, window);
  const countsFrom = window.before === undefined ? addDays(closeOf(base, years - 1, window), 1) : opens;
  return { on, window: { opens, closes }, countsFrom };
}

function closeOf(base: Day, years: number, window: AnniversaryWindow): Day {
  const after = periodOf(window.after);
  if (window.counting === undefined) return shifted(base, years, after, 1);
  return endOfPeriodBeginningWith(base, { months: 12 * years + after.months, days: after.days });
}

function shifted(base: Day, years: number, by: Period, sign: 1 | -1): Day {
  return addPeriod(base, { months: 12 * years + sign * by.months, days: sign * by.days });
}

export type Answered<Act> = { readonly next: number; readonly tooEarly: readonly Act[] };

/**
 * Which anniversary is the next one, after `acts` in order of day: each answers the oldest that is still
 * open, or the one in whose time it was done where that is later. One done too early answers none.
 */
export function nextUnanswered<Act extends { readonly day: Day }>(
  at: (number: number) => Anniversary,
  first: number,
  acts: readonly Act[],
): Answered<Act> {
  const tooEarly: Act[] = [];
  let next = first;
  for (const act of acts) {
    if (act.day < at(next).countsFrom) tooEarly.push(act);
    else {
      while (at(next + 1).window.opens <= act.day) next += 1;
      next += 1;
    }
  }
  return { next, tooEarly };
}
