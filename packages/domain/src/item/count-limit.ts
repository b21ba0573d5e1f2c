/** One limit of a duty, and the day it leads to. */
import { addPeriod } from '../calendar/period.ts';
import { dayInWords, periodInWords, periodOf, recordedDateInWords } from '../calendar/words.ts';
import type { Duty, Limit, Start } from '../rule/rule.ts';
import type { VesselEvent } from '../vessel/situation.ts';
import { ATTRIBUTES, dateOf } from './attribute.ts';
import { countInterval } from './count-interval.ts';
import { dateOnRecord } from './date-on-record.ts';
import { nextEvent } from './events-ahead.ts';
import type { Fact, FactKind } from './fact.ts';
import { findItemKind } from './item-kind.ts';
import type { LastDone } from './last-done.ts';
import { limitInWords } from './limit-words.ts';
import type { CountedLimit, Missing } from './obligation.ts';
import type { Particulars } from './weigh-condition.ts';
import {
  actInWords,
  capacitiesInWords,
  capitalised,
  eventInWords,
  factInWords,
  planOfEvent,
  resetInWords,
} from './words.ts';

/** What a duty is worked out from. `facts` are those of the unit aboard, in order of day. */
export type Grounds = Particulars & {
  readonly duty: Duty;
  readonly facts: readonly Fact[];
  readonly events: readonly VesselEvent[];
  readonly last: LastDone;
};

export type LimitCount = CountedLimit & {
  readonly source: Limit;
  /** Opens the sentence: "Serviced on 22 September 2025". */
  readonly basis: string;
  readonly assumed: readonly string[];
  readonly doubts: readonly string[];
  readonly missing: readonly Missing[];
  readonly alternatives: readonly CountedLimit[];
};

export function countLimit(limit: Limit, grounds: Grounds): LimitCount {
  switch (limit.kind) {
    case 'after':
      return countAfter(limit, grounds);
    case 'printed':
      return countPrinted(limit, grounds);
    case 'given':
      return countGiven(limit, grounds);
    case 'next_event':
      return countNextEvent(limit, grounds);
  }
}

type After = Extract<Limit, { kind: 'after' }>;

function countAfter(limit: After, grounds: Grounds): LimitCount {
  const start = startOf(limit.from, grounds);
  if (!start) return notCounted(limit, grounds, missingStart(limit.from, grounds));
  const { fact, assumed, doubts } = start;
  const result = countInterval(limit.plus, fact.on.first, limit.counting ?? 'days', grounds);
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
    factIds: [fact.id],
    basis: factInWords(fact),
    assumed: [...assumed, ...firstDayOf(fact, limit), ...readingOf(limit), ...result.assumed],
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

function firstDayOf(fact: Fact, limit: After): string[] {
  if (fact.on.precision === 'day' || (limit.counting ?? 'days') !== 'days') return [];
  return [`${factInWords(fact)}, the day not recorded: counted from ${dayInWords(fact.on.first)}.`];
}

function readingOf(limit: After): string[] {
  return limit.reading ? [`${capitalised(limit.reading)}: our reading.`] : [];
}

function missingStart(from: Start, grounds: Grounds): Missing {
  const [reset] = grounds.duty.resets;
  if (from !== 'last_done' || !reset) return missingFact(from === 'manufactured' ? from : 'installed', grounds);
  const by = reset.by.length > 0 ? ` by ${capacitiesInWords(reset.by)}` : '';
  return { what: `the last ${resetInWords(reset)}${by}`, whereFound: whereFound(reset.act, grounds) };
}

function missingFact(kind: FactKind, grounds: Grounds): Missing {
  return { what: `the ${actInWords(kind)}`, whereFound: whereFound(kind, grounds) };
}

function whereFound(kind: FactKind, grounds: Grounds): string {
  return findItemKind(grounds.kind)?.dates[kind] ?? 'the log book or an invoice';
}

function countPrinted(limit: Limit, grounds: Grounds): LimitCount {
  const printed = dateOnRecord(grounds.facts, ['printed_expiry']);
  const missing = missingFact('printed_expiry', grounds);
  if (!printed) return notCounted(limit, grounds, missing);
  const { fact, doubts } = printed;
  const last = dayInWords(fact.on.last);
  return {
    ...notCounted(limit, grounds, missing),
    missing: [],
    on: fact.on.last,
    factIds: [fact.id],
    basis: factInWords(fact),
    assumed: fact.on.precision === 'day' ? [] : [`The date printed is ${fact.on.text}, read as its last day, ${last}.`],
    doubts,
  };
}

function countGiven(limit: Extract<Limit, { kind: 'given' }>, grounds: Grounds): LimitCount {
  const { words, whereFound: place } = ATTRIBUTES[limit.attribute];
  const date = dateOf(grounds.attributes, limit.attribute);
  const none = notCounted(limit, grounds, { what: words, whereFound: place });
  if (!date) return none;
  const on = limit.plus ? addPeriod(date.first, periodOf(limit.plus)) : date.last;
  return { ...none, missing: [], on, basis: `On record: ${words}, ${recordedDateInWords(date)}` };
}

function countNextEvent(limit: Extract<Limit, { kind: 'next_event' }>, grounds: Grounds): LimitCount {
  const what = `the next ${eventInWords(limit.event)}`;
  const whereFound = `${planOfEvent(limit.event)}: record it as a planned event of the vessel`;
  const next = nextEvent(grounds.events, limit.event, grounds.last.fact?.on.first ?? null);
  const none = notCounted(limit, grounds, { what, whereFound });
  if (!next) return none;
  return { ...none, missing: [], on: next.on, basis: `${capitalised(what)} is planned for ${dayInWords(next.on)}` };
}

function notCounted(source: Limit, grounds: Grounds, missing: Missing): LimitCount {
  return {
    source,
    limit: limitInWords(source, grounds.duty),
    on: null,
    factIds: [],
    basis: `${capitalised(missing.what)} is not on record`,
    assumed: [],
    doubts: [],
    missing: [missing],
    alternatives: [],
  };
}
