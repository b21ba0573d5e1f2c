/** Several limits compete for one date: the earliest binds, and the others are kept. */
import type { Day } from '../calendar/day.ts';
import { countLimit, type Grounds, type LimitCount } from './count-limit.ts';

/** `due`: the earliest, with its day. `others`: what else was counted, or could not be. */
export type Bound =
  | { readonly kind: 'due'; readonly binds: LimitCount; readonly on: Day; readonly others: readonly LimitCount[] }
  | { readonly kind: 'unknown'; readonly others: readonly LimitCount[] };

export function bindEarliest(grounds: Grounds): Bound {
  const { duty } = grounds;
  const begins = beginningOf(grounds);
  const limits = duty.limits.map((limit) => countLimit(limit, grounds));
  if (limits.some(isKnown)) {
    const caps = (duty.cappedBy ?? []).map((limit) => countLimit(limit, grounds)).filter(isKnown);
    return earliest([...limits, ...caps].map((count) => (begins ? notBefore(begins, count) : count)));
  }
  const fallback = [...(begins ? [begins] : []), ...(duty.fallback ?? []).map((limit) => countLimit(limit, grounds))];
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

/** The day on which a duty that starts at an age begins; with nothing done yet, it is the day that it is due. */
function beginningOf(grounds: Grounds): LimitCount | null {
  const { startsAtAge } = grounds.duty;
  if (!startsAtAge) return null;
  return countLimit({ kind: 'after', from: 'manufactured', plus: { kind: 'fixed', period: startsAtAge } }, grounds);
}

function notBefore(begins: LimitCount, count: LimitCount): LimitCount {
  if (begins.on === null) {
    const unknown = 'The date of manufacture is not on record; the duty is taken to have begun.';
    return { ...count, assumed: [...count.assumed, unknown] };
  }
  if (count.on === null || count.on >= begins.on) return count;
  return { ...count, on: begins.on, limit: `${count.limit}, but not before ${begins.limit}` };
}
