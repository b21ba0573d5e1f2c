/** Several limits compete for one date: the earliest binds, and the others are kept. */
import type { Day } from '../calendar/day.ts';
import type { Limit } from '../rule/rule.ts';
import { countLimit } from './count-limit.ts';
import type { Grounds, LimitCount } from './limit-count.ts';

/**
 * `due`: the earliest, with its day; `latest`: the day on which every window closes. `others`: what else was
 * counted, or could not be. `nothing_owed`: no limit counts, as nothing has happened that would make it.
 */
export type Bound =
  | {
      readonly kind: 'due';
      readonly binds: LimitCount;
      readonly on: Day;
      readonly latest: Day | null;
      readonly others: readonly LimitCount[];
    }
  | { readonly kind: 'unknown'; readonly others: readonly LimitCount[] }
  | { readonly kind: 'nothing_owed' };

export function bindEarliest(grounds: Grounds): Bound {
  const { duty } = grounds;
  const count = (limits: readonly Limit[] = []) => limits.flatMap((limit) => countLimit(limit, grounds) ?? []);
  const begins = beginningOf(grounds);
  const limits = count(duty.limits);
  if (limits.length === 0) return { kind: 'nothing_owed' };
  if (limits.some(isKnown)) {
    const caps = count(duty.cappedBy).filter(isKnown);
    const known = [...limits, ...caps].map((each) => (begins ? notBefore(begins, each) : each));
    return earliest(known, count(duty.noLaterThan));
  }
  const fallback = [...(begins ? [begins] : []), ...count(duty.fallback)];
  return fallback.some(isKnown) ? earliest(fallback) : { kind: 'unknown', others: [...limits, ...fallback] };
}

function isKnown(count: LimitCount): boolean {
  return count.on !== null;
}

/** `closing` binds too where it comes before the others. */
function earliest(limits: readonly LimitCount[], closing: readonly LimitCount[] = []): Bound {
  const counts = [...limits, ...closing];
  const [binds] = counts.filter(isKnown).sort((a, b) => (a.on as Day) - (b.on as Day));
  if (!binds) return { kind: 'unknown', others: counts };
  const closes = closing.filter(isKnown).map(({ on }) => on as Day);
  const latest = closes.length > 0 ? (Math.min(...closes) as Day) : null;
  return { kind: 'due', binds, on: binds.on as Day, latest, others: counts.filter((count) => count !== binds) };
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
