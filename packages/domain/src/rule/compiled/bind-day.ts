/** Which limit binds, and on which day: the same as `bindEarliest`. */
import type { Aboard } from './aboard.ts';
import { NO_DAY, NONE, NOT_OWED } from './codes.ts';
import type { DutyPlan, LimitPlan } from './plan.ts';

/** Written over for each duty. `on`: `NOT_OWED`, `NO_DAY` where it is not known, or the day. */
export type BoundDay = {
  on: number;
  /** The limit that binds; `null`: the day on which the duty begins. */
  binds: LimitPlan | null;
  /** The day on which every window closes; `NO_DAY`. */
  latest: number;
};

export const nothingBound = (): BoundDay => ({ on: NO_DAY, binds: null, latest: NO_DAY });

export function bindDay(duty: DutyPlan, limits: readonly LimitPlan[], aboard: Aboard, bound: BoundDay): void {
  const begins = duty.begins === null ? NO_DAY : duty.begins.day(aboard);
  clear(NOT_OWED, bound);
  const found = earliest(limits, notBefore(begins), aboard, bound);
  if (found === NOT_COUNTED) return;
  if (begins !== NO_DAY && aboard.last === NONE) clear(begins, bound);
  else if (found === OF_OLD || (found === BY_TRIGGER && !bindFallback(duty, begins, limits, aboard, bound))) {
    earliest(duty.cappedBy, notBefore(begins), aboard, bound);
    closeBy(duty.noLaterThan, aboard, bound);
  } else if (found === MISSING) bindFallback(duty, begins, [], aboard, bound);
}

function clear(on: number, bound: BoundDay): void {
  bound.on = on;
  bound.binds = null;
  bound.latest = NO_DAY;
}

/** What came of limits: none counts; a fact is missing for each; a day by triggers alone; a day. */
const NOT_COUNTED = 0;
const MISSING = 1;
const BY_TRIGGER = 2;
const OF_OLD = 3;

/** A duty that begins later has no date before. */
const notBefore = (begins: number): number => (begins === NO_DAY ? NOT_OWED : begins);

/** Takes the first of the earliest, if it is earlier than what is bound. */
function earliest(limits: readonly LimitPlan[], floor: number, aboard: Aboard, bound: BoundDay): number {
  let found = NOT_COUNTED;
  for (const limit of limits) {
    const on = limit.day(aboard);
    if (on === NOT_OWED) continue;
    if (bound.on === NOT_OWED) bound.on = NO_DAY;
    if (on === NO_DAY) {
      if (found === NOT_COUNTED) found = MISSING;
      continue;
    }
    found = limit.kind === 'triggered' && found !== OF_OLD ? BY_TRIGGER : OF_OLD;
    take(limit, Math.max(on, floor), bound);
  }
  return found;
}

function take(limit: LimitPlan, on: number, bound: BoundDay): void {
  if (on >= bound.on) return;
  bound.on = on;
  bound.binds = limit;
}

/** The limits that step in, and beside them the triggers as they stand; whether any gives a day. */
function bindFallback(
  { fallback }: DutyPlan,
  begins: number,
  triggers: readonly LimitPlan[],
  aboard: Aboard,
  bound: BoundDay,
): boolean {
  const { on, binds } = bound;
  const isDone = aboard.last !== NONE && (aboard.columns.facts.day[aboard.last] as number) >= begins;
  clear(begins === NO_DAY || isDone ? NO_DAY : begins, bound);
  earliest(fallback, NOT_OWED, aboard, bound);
  if (bound.on !== NO_DAY) {
    earliest(triggers, NOT_OWED, aboard, bound);
    return true;
  }
  bound.on = on;
  bound.binds = binds;
  return false;
}

function closeBy(limits: readonly LimitPlan[], aboard: Aboard, bound: BoundDay): void {
  for (const limit of limits) {
    const on = limit.day(aboard);
    if (on === NOT_OWED || on === NO_DAY) continue;
    bound.latest = Math.min(bound.latest, on);
    take(limit, on, bound);
  }
}
