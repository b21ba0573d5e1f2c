/** A limit that counts an interval from a day on record. */
import type { Day } from '../calendar/day.ts';
import { dayInWords, periodInWords } from '../calendar/words.ts';
import type { Duty, Limit, Start } from '../rule/rule.ts';
import { countInterval } from './count-interval.ts';
import { dateOnRecord } from './date-on-record.ts';
import { dayItCountsAsDone } from './day-it-counts-as-done.ts';
import type { Fact } from './fact.ts';
import { failedSince } from './last-done.ts';
import { type Grounds, type LimitCount, missingFact, missingLast, notCounted } from './limit-count.ts';
import { limitInWords } from './limit-words.ts';
import type { Missing } from './obligation.ts';
import { capacitiesInWords, capitalised, factInWords } from './words.ts';

type After = Extract<Limit, { kind: 'after' }>;

/** `null`: nothing has failed, so nothing is owed. */
export function countAfter(limit: After, grounds: Grounds): LimitCount | null {
  const start = startOf(limit.from, grounds);
  if (!start)
    return limit.from === 'first_failed' ? null : notCounted(limit, grounds, missingStart(limit.from, grounds));
  const { fact, assumed, doubts } = start;
  const from = limit.from === 'last_done' ? dayItCountsAsDone(fact, limit, grounds) : fact.on.first;
  const result = countInterval(limit.plus, from, limit.counting ?? 'days', grounds);
  if (result.kind === 'missing') {
    const basis = `${factInWords(fact)}; ${result.missing.what}: not on record`;
    return { ...notCounted(limit, grounds, result.missing), basis };
  }
  const fromMemory = limit.fromMemory || result.fromMemory;
  const words = limitInWords(limit, grounds.duty, result.period);
  return {
    source: limit,
    limit: fromMemory ? `${words} (from memory)` : words,
    on: result.on,
    countedFrom: from,
    factIds: [fact.id],
    basis: limit.from === 'first_failed' ? `${factInWords(fact)}: not passed` : factInWords(fact),
    assumed: [...assumed, ...dayKept(fact, from), ...firstDayOf(fact, limit), ...readingOf(limit), ...result.assumed],
    windows: [],
    setAside: [],
    doubts: fromMemory
      ? [...doubts, `The figure of ${periodInWords(result.period)} is from memory, not read.`]
      : doubts,
    missing: [],
    alternatives: result.alternatives.map((other) => ({ ...other, factIds: [fact.id] })),
  };
}

type StartOnRecord = { readonly fact: Fact; readonly assumed: readonly string[]; readonly doubts: readonly string[] };

function startOf(from: Start, { facts, last, duty }: Grounds): StartOnRecord | null {
  switch (from) {
    case 'last_done':
      return last.fact && { fact: last.fact, assumed: last.assumed, doubts: [] };
    case 'first_failed': {
      const [failed] = failedSince(facts, duty.resets, last.fact);
      return failed ? { fact: failed, assumed: [], doubts: [] } : null;
    }
    case 'manufactured': {
      const made = dateOnRecord(facts, ['manufactured']);
      return made && { ...made, assumed: [] };
    }
    case 'installed': {
      const fitted = dateOnRecord(facts, ['installed', 'replaced']);
      return (
        fitted && { fact: fitted.fact, assumed: [], doubts: [...fitted.doubts, ...fitterDoubt(fitted.fact, duty)] }
      );
    }
  }
}

/** A new unit is a fact whoever fitted it; that the rule asks for somebody else is a doubt on the work. */
function fitterDoubt(fact: Fact, duty: Duty): string[] {
  const asked = duty.resets.find((reset) => reset.act === 'replaced')?.by ?? [];
  const capacity = fact.doneBy?.capacity;
  if (capacity === undefined || asked.length === 0 || asked.includes(capacity)) return [];
  return [`It was fitted by ${capacitiesInWords([capacity])}; the work asks for ${capacitiesInWords(asked)}.`];
}

const WHOLE = {
  whole_months: 'Counted in whole months: to the end of the month it leads to.',
  whole_years: 'Counted in whole years: to 31 December of the year it leads to.',
} as const;

function dayKept({ on }: Fact, from: Day): string[] {
  if (from === on.first) return [];
  return [`Done in the window around ${dayInWords(from)}, it counts as done on ${dayInWords(from)}.`];
}

function firstDayOf(fact: Fact, limit: After): string[] {
  const counting = limit.counting ?? 'days';
  if (counting === 'whole_months' || counting === 'whole_years') return [WHOLE[counting]];
  if (fact.on.precision === 'day' || counting !== 'days') return [];
  return [`${factInWords(fact)}, the day not recorded: counted from ${dayInWords(fact.on.first)}.`];
}

function readingOf(limit: After): string[] {
  return limit.reading ? [`${capitalised(limit.reading)}: our reading.`] : [];
}

function missingStart(from: Exclude<Start, 'first_failed'>, grounds: Grounds): Missing {
  switch (from) {
    case 'last_done':
      return missingLast(grounds);
    case 'manufactured':
    case 'installed':
      return missingFact(from, grounds);
  }
}
