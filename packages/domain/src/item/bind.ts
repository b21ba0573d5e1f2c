/** Several limits compete for one date: the earliest binds, and the others are kept. */
import type { Day } from '../calendar/day.ts';
import { addPeriod } from '../calendar/period.ts';
import { dayInWords, periodInWords, periodOf } from '../calendar/words.ts';
import { countLimit, type Grounds, type LimitCount } from './count-limit.ts';
import { dateOnRecord } from './date-on-record.ts';
import { factInWords } from './words.ts';

/** `due`: the earliest, with its day. `others`: what else was counted, or could not be. */
export type Bound =
  | { readonly kind: 'due'; readonly binds: LimitCount; readonly on: Day; readonly others: readonly LimitCount[] }
  | { readonly kind: 'unknown'; readonly others: readonly LimitCount[] };

export function bindEarliest(grounds: Grounds): Bound {
  const { duty } = grounds;
  const limits = duty.limits.map((limit) => countLimit(limit, grounds));
  if (limits.some(isKnown)) {
    const caps = (duty.cappedBy ?? []).map((limit) => countLimit(limit, grounds)).filter(isKnown);
    return earliest([...limits, ...caps].map((count) => notBeforeAge(count, grounds)));
  }
  const young = startOfAge(grounds);
  if (young) return earliest([young]);
  const fallback = (duty.fallback ?? []).map((limit) => countLimit(limit, grounds));
  return fallback.some(isKnown) ? earliest(fallback) : { kind: 'unknown', others: [...limits, ...fallback] };
}

function isKnown(count: LimitCount): boolean {
  return count.on !== null;
}

function earliest(counts: readonly LimitCount[]): Bound {
  const [binds] = counts.filter(isKnown).sort((a, b) => (a.on as Day) - (b.on as Day));
  if (!binds) return { kind: 'unknown', others: counts };
  return { kind: 'due', binds, on: binds.on as Day, others: counts.filter((count) => count !== binds) };
}

/** With nothing done yet, a duty that starts at an age falls due on reaching it. */
function startOfAge({ duty, facts }: Grounds): LimitCount | null {
  const made = dateOnRecord(facts, ['manufactured']);
  const [source] = duty.limits;
  if (!duty.startsAtAge || !made || !source) return null;
  const { fact, doubts } = made;
  const start = dayInWords(fact.on.first);
  return {
    source,
    limit: `${periodInWords(duty.startsAtAge)} after manufacture, when the duty begins`,
    on: addPeriod(fact.on.first, periodOf(duty.startsAtAge)),
    factIds: [fact.id],
    basis: factInWords(fact),
    assumed: fact.on.precision === 'day' ? [] : [`${factInWords(fact)}, the day not recorded: counted from ${start}.`],
    doubts,
    missing: [],
    alternatives: [],
  };
}

function notBeforeAge(count: LimitCount, grounds: Grounds): LimitCount {
  const begins = startOfAge(grounds);
  if (!begins || begins.on === null || count.on === null || count.on >= begins.on) return count;
  return { ...count, on: begins.on, limit: `${count.limit}, but not before ${begins.limit}` };
}
