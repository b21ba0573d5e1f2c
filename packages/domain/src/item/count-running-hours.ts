/** Hours run since the last act: the maker's own figure, projected from what the meter read. */
import { dayInWords } from '../calendar/words.ts';
import type { Limit } from '../rule/rule.ts';
import { ATTRIBUTES, wholeNumberOf } from './attribute.ts';
import { dayOfFact } from './facts-on-record.ts';
import { type Grounds, type LimitCount, missingLast, notCounted, whereFound } from './limit-count.ts';
import type { Missing } from './obligation.ts';
import { hourReadings, perDay, projectHours, type Rate } from './running-hours.ts';
import { factInWords, resetInWords } from './words.ts';

export function countRunningHours(limit: Extract<Limit, { kind: 'running_hours' }>, grounds: Grounds): LimitCount {
  if ('hours' in limit) return countHours(limit, grounds, limit.hours, []);
  const { words, whereFound: place } = ATTRIBUTES[limit.attribute];
  const own = wholeNumberOf(grounds.attributes, limit.attribute);
  const hours = own ?? limit.otherwise ?? null;
  if (hours === null) return notCounted(limit, grounds, { what: words, whereFound: place });
  return countHours(limit, grounds, hours, own === null ? [countedInstead(words, hours)] : []);
}

function countHours(limit: Limit, grounds: Grounds, hours: number, assumed: readonly string[]): LimitCount {
  const { fact } = grounds.last;
  if (!fact) return notCounted(limit, grounds, missingLast(grounds));
  const readings = hourReadings(grounds.facts);
  const projection = projectHours(readings, dayOfFact(fact), hours);
  switch (projection.kind) {
    case 'too_few_readings':
      return notCounted(limit, grounds, readingsMissing(grounds));
    case 'hardly_runs':
      return notCounted(limit, grounds, hardlyRuns(projection.rate, hours, grounds));
    case 'reached':
      return {
        ...notCounted(limit, grounds, readingsMissing(grounds)),
        missing: [],
        limit: `${hours} running hours after the last ${resetInWords(grounds.duty.resets[0])}, estimated`,
        on: projection.on,
        countedFrom: dayOfFact(fact),
        factIds: [fact.id, projection.rate.from.factId, projection.rate.to.factId],
        basis: factInWords(fact),
        assumed: [...grounds.last.assumed, ...assumed],
        doubts: [estimate(projection.rate)],
      };
  }
}

function countedInstead(words: string, hours: number): string {
  return `Not on record: ${words}. Counted instead: ${hours} hours.`;
}

function readingsMissing(grounds: Grounds): Missing {
  return { what: 'two readings of the running-hours meter', whereFound: whereFound('meter', grounds) };
}

/** Said as what is missing: a reading would settle it. */
function hardlyRuns(rate: Rate, hours: number, grounds: Grounds): Missing {
  return {
    what: `a later meter reading (at ${rateInWords(rate)} ${hours} hours are not in sight)`,
    whereFound: whereFound('meter', grounds),
  };
}

function estimate(rate: Rate): string {
  return `The day is an estimate from running hours: ${rateInWords(rate)}. It moves with every reading.`;
}

function rateInWords(rate: Rate): string {
  const { from, to } = rate;
  const monthly = Math.round(((perDay(rate) * 365.25) / 12) * 10) / 10;
  return `${monthly} hours a month between ${dayInWords(from.day)} (${from.hours} h) and ${dayInWords(to.day)} (${to.hours} h)`;
}
