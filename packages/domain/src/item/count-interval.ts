/** From a day and an interval to the day it leads to, with what had to be assumed on the way. */
import { type Day, endOfMonth, endOfYear } from '../calendar/day.ts';
import { addPeriod, endOfPeriodBeginningWith } from '../calendar/period.ts';
import { dayInWords, periodInWords, periodOf, periodOfMonths } from '../calendar/words.ts';
import type { Counting, Interval, IntervalOption } from '../rule/rule.ts';
import { ATTRIBUTES, wholeNumberOf } from './attribute.ts';
import type { CountedLimit, Missing } from './obligation.ts';
import { conditionInWords, type Particulars, type Weighed, weighCondition } from './weigh-condition.ts';

export type CountedInterval =
  | {
      readonly kind: 'counted';
      readonly on: Day;
      /** ISO 8601. */
      readonly period: string;
      readonly fromMemory: boolean;
      readonly assumed: readonly string[];
      /** Longer intervals that were weighed and do not apply. */
      readonly alternatives: readonly CountedLimit[];
    }
  | { readonly kind: 'missing'; readonly missing: Missing };

export function countInterval(interval: Interval, start: Day, counting: Counting, of: Particulars): CountedInterval {
  const day = (period: string) => reach(start, period, counting);
  switch (interval.kind) {
    case 'fixed':
      return counted(day(interval.period), interval.period);
    case 'own_figure':
      return countOwnFigure(interval, day, of);
    case 'by_condition':
      return countByCondition(interval.options, day, of);
    case 'by_age':
      return countByAge(interval, day, of);
  }
}

type Reach = (period: string) => Day;

/** Always from the original day; to the end of the month or year where the clause counts in those. */
function reach(start: Day, period: string, counting: Counting): Day {
  const day = addPeriod(start, periodOf(period));
  switch (counting) {
    case 'days':
      return day;
    case 'whole_months':
      return endOfMonth(day);
    case 'whole_years':
      return endOfYear(day);
    case 'beginning_with':
      return endOfPeriodBeginningWith(start, periodOf(period));
  }
}

function counted(on: Day, period: string, assumed: readonly string[] = []): CountedInterval {
  return { kind: 'counted', on, period, fromMemory: false, assumed, alternatives: [] };
}

function countOwnFigure(
  interval: Extract<Interval, { kind: 'own_figure' }>,
  day: Reach,
  of: Particulars,
): CountedInterval {
  const attribute = ATTRIBUTES[interval.attribute];
  const months = wholeNumberOf(of.attributes, interval.attribute);
  if (months !== null) return counted(day(periodOfMonths(months)), periodOfMonths(months));
  if (interval.otherwise === undefined) {
    return { kind: 'missing', missing: { what: attribute.words, whereFound: attribute.whereFound } };
  }
  const assumed = `Not on record: ${attribute.words}. Counted instead: ${periodInWords(interval.otherwise)}.`;
  return counted(day(interval.otherwise), interval.otherwise, [assumed]);
}

function countByCondition(options: readonly IntervalOption[], day: Reach, of: Particulars): CountedInterval {
  const weighed = options.map((option) => weighOption(option, day(option.period), of));
  const chosen = weighed.findIndex(({ verdict }) => verdict === 'holds');
  const { option, next } = weighed[chosen] as WeighedOption;
  const longer = weighed.slice(0, chosen);
  return {
    kind: 'counted',
    on: next,
    period: option.period,
    fromMemory: option.fromMemory ?? false,
    assumed: longer.filter(({ verdict }) => verdict === 'not_recorded').map(notRecorded),
    alternatives: longer
      .filter(isForThisKind)
      .filter(({ verdict }) => verdict === 'fails')
      .map(alternative),
  };
}

type WeighedOption = {
  readonly option: IntervalOption;
  readonly next: Day;
  readonly conditions: readonly { readonly condition: IntervalOption['all'][number]; readonly weighed: Weighed }[];
  readonly verdict: Weighed;
};

function weighOption(option: IntervalOption, next: Day, of: Particulars): WeighedOption {
  const conditions = option.all.map((condition) => ({ condition, weighed: weighCondition(condition, of, next) }));
  const has = (verdict: Weighed) => conditions.some(({ weighed }) => weighed === verdict);
  return { option, next, conditions, verdict: has('fails') ? 'fails' : has('not_recorded') ? 'not_recorded' : 'holds' };
}

function isForThisKind({ conditions }: WeighedOption): boolean {
  return !conditions.some(({ condition, weighed }) => condition.kind === 'kind_is' && weighed === 'fails');
}

function wordsOf({ conditions, next }: WeighedOption, wanted: Weighed): string {
  return conditions
    .filter(({ weighed }) => weighed === wanted)
    .map(({ condition }) => conditionInWords(condition, next))
    .join('; ');
}

function notRecorded(weighed: WeighedOption): string {
  const until = `${periodInWords(weighed.option.period)}, to ${dayInWords(weighed.next)},`;
  return `The shorter interval counts. For ${until} this would have to be on record: ${wordsOf(weighed, 'not_recorded')}.`;
}

function alternative(weighed: WeighedOption): CountedLimit {
  const limit = `${periodInWords(weighed.option.period)}, which would need ${wordsOf(weighed, 'fails')}`;
  return { limit, on: weighed.next, factIds: [] };
}

/**
 * Shorter with age: the last day on which no band is broken. A band only begins to bind at its age, so a
 * service just before it does not fall due before it either.
 */
function countByAge(interval: Extract<Interval, { kind: 'by_age' }>, day: Reach, of: Particulars): CountedInterval {
  const base = { on: day(interval.period), period: interval.period };
  const made = of.manufactured?.first ?? null;
  const bands = interval.bands.map((band) => {
    const reached = day(band.period);
    const begins = made === null ? reached : addPeriod(made, periodOf(band.fromAge));
    return { on: Math.max(reached, begins) as Day, period: band.period };
  });
  const shortest = bands.reduce((a, b) => (b.on < a.on ? b : a), base);
  const unknown = `The date of manufacture is not on record, so the interval for its age is not known: the shortest, ${periodInWords(shortest.period)}, counts.`;
  return counted(shortest.on, shortest.period, made === null ? [unknown] : []);
}
