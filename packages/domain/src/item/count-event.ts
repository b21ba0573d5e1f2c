/** Limits that hang on something that happened to the vessel, is planned for her, or was set by a surveyor. */
import { addDays, type Day } from '../calendar/day.ts';
import { addPeriod } from '../calendar/period.ts';
import { dayInWords, periodOf } from '../calendar/words.ts';
import type { Limit } from '../rule/rule.ts';
import { nextEvent } from './events-ahead.ts';
import { dayOfFact } from './facts-on-record.ts';
import { failedSince } from './last-done.ts';
import { type Grounds, type LimitCount, missingLast, notCounted, whereFound } from './limit-count.ts';
import { triggerInWords } from './limit-words.ts';
import type { Missing } from './obligation.ts';
import { capitalised, eventInWords, factInWords, planOfEvent, resetInWords, withArticle } from './words.ts';

type Of<Kind extends Limit['kind']> = Extract<Limit, { kind: Kind }>;

export function countNextEvent(limit: Of<'next_event'>, grounds: Grounds): LimitCount {
  const what = `the next ${eventInWords(limit.event)}`;
  const place = `${planOfEvent(limit.event)}: record it as a planned event of the vessel`;
  const next = nextEvent(grounds.events, limit.event, grounds.last.fact?.on.first ?? null);
  const none = notCounted(limit, grounds, { what, whereFound: place });
  if (!next) return none;
  return { ...none, missing: [], on: next.on, basis: `${capitalised(what)} is planned for ${dayInWords(next.on)}` };
}

/** The latest start that the last act covers; with no act on record, the day before the next start planned. */
export function countBeforeEvent(limit: Of<'before_event'>, grounds: Grounds): LimitCount {
  const none = notCounted(limit, grounds, missingLast(grounds));
  const { fact, assumed } = grounds.last;
  if (!fact) {
    const start = nextEvent(grounds.events, limit.event, null);
    if (!start) return none;
    const basis = `${none.basis}, and a ${eventInWords(limit.event)} is planned for ${dayInWords(start.on)}`;
    return { ...none, missing: [], on: addDays(start.on, -1), basis };
  }
  const on = addPeriod(fact.on.first, periodOf(limit.within));
  const { basis, doubts } = startsPlanned(limit, grounds, on);
  return { ...none, missing: [], on, factIds: [fact.id], basis: factInWords(fact) + basis, assumed, doubts };
}

function startsPlanned(limit: Of<'before_event'>, { events, last }: Grounds, covered: Day) {
  const next = nextEvent(events, limit.event, last.fact?.on.first ?? null);
  const beyond = events.find((event) => event.event === limit.event && event.planned && event.on > covered);
  const words = eventInWords(limit.event);
  return {
    basis: next && next.on <= covered ? `; the ${words} planned for ${dayInWords(next.on)} is covered` : '',
    doubts: beyond ? [`The ${words} planned for ${dayInWords(beyond.on)} is not covered by it.`] : [],
  };
}

/** The first event or fact of those named on or after which the duty has not been done. */
export function countTriggered(limit: Of<'triggered'>, grounds: Grounds): LimitCount | null {
  const since = grounds.last.fact ? dayOfFact(grounds.last.fact) : Number.NEGATIVE_INFINITY;
  const [first] = [...eventsSince(limit, grounds, since), ...factsSince(limit, grounds, since)].sort(
    (a, b) => a.on - b.on,
  );
  if (!first) return null;
  return { ...notCounted(limit, grounds, missingLast(grounds)), missing: [], ...first };
}

type Happened = Pick<LimitCount, 'on' | 'basis' | 'factIds' | 'limit'> & { readonly on: Day };

function eventsSince({ events: kinds }: Of<'triggered'>, { events, duty }: Grounds, since: number): Happened[] {
  const done = resetInWords(duty.resets[0]);
  return events
    .filter(({ event, planned, on }) => !planned && kinds.includes(event) && on > since)
    .map(({ event, on }) => ({
      on,
      factIds: [],
      limit: triggerInWords({ events: [event], facts: [] }),
      basis: `${capitalised(withArticle(eventInWords(event)))} on ${dayInWords(on)}, and no ${done} since`,
    }));
}

function factsSince({ facts: kinds }: Of<'triggered'>, { facts, duty }: Grounds, since: number): Happened[] {
  const done = resetInWords(duty.resets[0]);
  return facts
    .filter((fact) => kinds.includes(fact.fact) && fact.outcome === 'passed' && dayOfFact(fact) > since)
    .map((fact) => ({
      on: fact.on.first,
      factIds: [fact.id],
      limit: triggerInWords({ events: [], facts: [fact.fact] }),
      basis: `${factInWords(fact)}, and no ${done} since`,
    }));
}

/** The day set at the last failure that names one; `null` while nothing has failed. */
export function countDeadline(limit: Of<'deadline_set'>, grounds: Grounds): LimitCount | null {
  const failures = failedSince(grounds.facts, grounds.duty.resets, grounds.last.fact);
  const last = failures.at(-1);
  if (!last) return null;
  const none = notCounted(limit, grounds, periodSet(grounds));
  const failed = `${factInWords(last)}: not passed`;
  const set = failures.findLast((failure) => failure.until !== undefined);
  if (set?.until === undefined)
    return { ...none, basis: `${failed}; until when it must be put right is not on record` };
  return { ...none, missing: [], on: set.until, factIds: [set.id], basis: failed };
}

function periodSet(grounds: Grounds): Missing {
  const what = 'the day by which the surveyor wants it put right';
  return { what, whereFound: `${whereFound('inspected', grounds)}: enter it with the inspection that did not pass` };
}
