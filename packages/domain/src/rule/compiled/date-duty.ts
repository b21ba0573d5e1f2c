/** From the day that binds to every day that follows from it: the same as `dateOutcome`. */
import { AUTHORITY } from '../../item/extended-until.ts';
import type { Aboard } from './aboard.ts';
import { type BoundDay, bindDay, nothingBound } from './bind-day.ts';
import { NO_DAY, NONE, NOT_OWED } from './codes.ts';
import type { DutyPlan, LimitPlan } from './plan.ts';
import { lastThatCounts, resetTable } from './resets.ts';

/** The days of one duty, written over for each. `dueOn`: `NO_DAY` where it is not known. */
export type DutyDays = {
  dueOn: number;
  overdueAfter: number;
  expiresOn: number;
  replaceBy: number;
  latestPermittedOn: number;
  readonly bound: BoundDay;
};

export function noDays(): DutyDays {
  const days = { dueOn: NO_DAY, overdueAfter: NO_DAY, expiresOn: NO_DAY, replaceBy: NO_DAY, latestPermittedOn: NO_DAY };
  return { ...days, bound: nothingBound() };
}

/** Whether the duty is owed. `own`: with the organisation's own interval, without the published window and extension. */
export function dateDuty(duty: DutyPlan, own: boolean, aboard: Aboard, days: DutyDays): boolean {
  const { bound } = days;
  bindDay(duty, own ? duty.ownLimits : duty.limits, aboard, bound);
  if (bound.on === NOT_OWED) return false;
  forget(days);
  if (bound.on !== NO_DAY) follow(duty, own, aboard, days);
  return true;
}

function forget(days: DutyDays): void {
  days.dueOn = NO_DAY;
  days.overdueAfter = NO_DAY;
  days.expiresOn = NO_DAY;
  days.replaceBy = NO_DAY;
  days.latestPermittedOn = NO_DAY;
}

function follow(duty: DutyPlan, own: boolean, aboard: Aboard, days: DutyDays): void {
  const { bound } = days;
  const { on } = bound;
  if (duty.replaceBy) days.replaceBy = duty.replaceBy.day(on, aboard);
  days.dueOn = duty.replaceBy?.comesEarlier && days.replaceBy !== NO_DAY ? days.replaceBy : on;
  const extension = own ? null : duty.extension;
  if (extension) days.latestPermittedOn = extension(on, aboard);
  const runsOut = duty.expires && bound.binds?.kind !== 'next_event';
  if (runsOut) days.expiresOn = on;
  days.overdueAfter = runsOut ? on : lastClose(own ? null : duty.window, days, aboard);
  if (days.latestPermittedOn !== NO_DAY) extend(aboard, days);
}

/** The day on which the last window closes; the due day where there is none. */
function lastClose(window: DutyPlan['window'], { bound, dueOn }: DutyDays, aboard: Aboard): number {
  const { binds, latest } = bound;
  if (binds !== null && hasWindows(binds)) return lastOwnClose(binds, bound, dueOn, aboard);
  if (window === null || binds?.kind === 'triggered' || window.opens(dueOn) > latest) return dueOn;
  return Math.min(window.closes(dueOn), latest);
}

function hasWindows({ kind }: LimitPlan): boolean {
  return kind === 'anniversary' || kind === 'one_of_anniversaries' || kind === 'given_anniversary';
}

/** Counted once more, so that the windows kept are those of the limit that binds. */
function lastOwnClose(binds: LimitPlan, { latest }: BoundDay, dueOn: number, aboard: Aboard): number {
  binds.day(aboard);
  const at = aboard.opens.findLastIndex((opens) => opens <= latest);
  return at === NONE ? dueOn : Math.min(aboard.closes[at] as number, latest);
}

const BY_AUTHORITY = resetTable([{ act: 'extended', by: AUTHORITY }]);

/** By the extension on record since the duty was last done, as far as the rule lets it go. */
function extend(aboard: Aboard, days: DutyDays): void {
  const { day, until } = aboard.columns.facts;
  const since = aboard.last === NONE ? NOT_OWED : (day[aboard.last] as number);
  const at = lastThatCounts(BY_AUTHORITY, aboard);
  const row = at === NONE ? NONE : (aboard.rows[at] as number);
  if (row === NONE || (day[row] as number) < since || until[row] === NO_DAY) return;
  days.overdueAfter = Math.max(days.overdueAfter, Math.min(until[row] as number, days.latestPermittedOn));
}
