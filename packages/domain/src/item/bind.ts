/** Several limits compete for one date: the earliest binds, and the others are kept. */
import type { Day } from '../calendar/day.ts';
import type { Limit } from '../rule/rule.ts';
import { countLimit } from './count-limit.ts';
import { dayOfFact } from './facts-on-record.ts';
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
  if (begins && isKnown(begins) && !grounds.last.fact) {
    return earliest([begins, ...limits.filter(isKnown).map((each) => notBefore(begins, each))]);
  }
  const fallback = [...(begins && !isDoneSince(begins, grounds) ? [begins] : []), ...count(duty.fallback)];
  if (limits.some(isKnown) && (limits.some(isKnownOfOld) || !fallback.some(isKnown))) {
    const caps = count(duty.cappedBy).filter(isKnown);
    const known = [...limits, ...caps].map((each) => (begins ? notBefore(begins, each) : each));
    return earliest(known, count(duty.noLaterThan));
  }
  const instead = [...fallback, ...limits.filter(isKnown)];
  return instead.some(isKnown) ? earliest(instead) : { kind: 'unknown', others: [...limits, ...fallback] };
}

/** A trigger comes on top: what it dates was owed before it, and its own day takes no other's place. */
function isKnownOfOld(count: LimitCount): boolean {
  return isKnown(count) && count.source.kind !== 'triggered';
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

/** The day on which a duty that does not begin at once begins; `null` for one that does. */
export function beginningOf(grounds: Grounds): LimitCount | null {
  const { begins } = grounds.duty;
  return begins ? countLimit({ kind: 'after', ...begins }, grounds) : null;
}

/** It was done since it began, so its beginning is no longer the date. */
function isDoneSince(begins: LimitCount, { last }: Grounds): boolean {
  return begins.on !== null && last.fact !== null && dayOfFact(last.fact) >= begins.on;
}

function notBefore(begins: LimitCount, count: LimitCount): LimitCount {
  if (begins.on === null) {
    return { ...count, assumed: [...count.assumed, `${begins.basis}; the duty is taken to have begun.`] };
  }
  if (count.on === null || count.on >= begins.on) return count;
  const assumed = [...count.assumed, ...begins.assumed];
  return { ...count, on: begins.on, limit: `${count.limit}, but not before ${begins.limit}`, assumed };
}
