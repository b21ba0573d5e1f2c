/** An interval made ready: from a day to the day it leads to, the same as `countInterval`. */
import { addMonths, type Day, endOfMonth, endOfYear } from '../../calendar/day.ts';
import { endOfPeriodBeginningWith } from '../../calendar/period.ts';
import { periodOf } from '../../calendar/words.ts';
import type { Counting, Interval } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { attributeCode, NO_DAY, NONE } from './codes.ts';
import { compileCondition, HOLDS, type NumberValue } from './compile-condition.ts';
import { madeRow } from './dates-aboard.ts';

/** `NO_DAY` where somebody's own figure is missing. */
export type IntervalPlan = (start: number, aboard: Aboard) => number;

export function compileInterval(interval: Interval, counting: Counting, number: NumberValue): IntervalPlan {
  switch (interval.kind) {
    case 'fixed':
      return reachOf(interval.period, counting);
    case 'own_figure':
      return ownFigure(interval, counting);
    case 'by_condition':
      return byCondition(interval, counting, number);
    case 'by_age':
      return byAge(interval, counting);
  }
}

/** The organisation's own interval for the duty in hand. */
export function ownInterval(counting: Counting): IntervalPlan {
  return (start, { ownMonths, ownDays }) => reach(start, ownMonths, ownDays, counting);
}

type Of<Kind extends Interval['kind']> = Extract<Interval, { kind: Kind }>;
type Reach = (start: number) => number;

function reachOf(period: string, counting: Counting): Reach {
  const { months, days } = periodOf(period);
  if (counting === 'days' && days === 0) return (start) => addMonths(start as Day, months);
  return (start) => reach(start, months, days, counting);
}

function reach(start: number, months: number, days: number, counting: Counting): number {
  const day = (addMonths(start as Day, months) + days) as Day;
  switch (counting) {
    case 'days':
      return day;
    case 'whole_months':
      return endOfMonth(day);
    case 'whole_years':
      return endOfYear(day);
    case 'beginning_with':
      return endOfPeriodBeginningWith(start as Day, { months, days });
  }
}

function ownFigure({ attribute, otherwise }: Of<'own_figure'>, counting: Counting): IntervalPlan {
  const at = attributeCode(attribute);
  const without = otherwise === undefined ? () => NO_DAY : reachOf(otherwise, counting);
  return (start, { whole }) => (whole[at] === 0 ? without(start) : reach(start, whole[at] as number, 0, counting));
}

/** The first whose conditions all hold; the last has none. */
function byCondition({ options }: Of<'by_condition'>, counting: Counting, number: NumberValue): IntervalPlan {
  const plans = options.map(({ period, all }) => ({
    reached: reachOf(period, counting),
    all: all.map((condition) => compileCondition(condition, number)),
  }));
  return (start, aboard) => {
    for (const { reached, all } of plans) {
      const next = reached(start);
      if (all.every((weigh) => weigh(aboard, next) === HOLDS)) return next;
    }
    return NO_DAY;
  };
}

/** The earliest day on which a band is broken; none binds before its age. */
function byAge({ period, bands }: Of<'by_age'>, counting: Counting): IntervalPlan {
  const plain = reachOf(period, counting);
  const plans = bands.map((band) => ({ reached: reachOf(band.period, counting), age: reachOf(band.fromAge, 'days') }));
  return (start, aboard) => {
    const made = madeRow(aboard);
    let earliest = plain(start);
    for (const { reached, age } of plans) {
      const day = reached(start);
      const begins = made === NONE ? day : age(aboard.columns.facts.first[made] as number);
      earliest = Math.min(earliest, Math.max(day, begins));
    }
    return earliest;
  };
}
