/** From the day that binds to every date that follows from it. */
import { addDays, addMonths, type Day } from '../calendar/day.ts';
import { addPeriod, type Period } from '../calendar/period.ts';
import { dayInWords, periodOf } from '../calendar/words.ts';
import type { Duty } from '../rule/rule.ts';
import type { Bound } from './bind.ts';
import type { Grounds } from './count-limit.ts';
import { firstEventFrom, lastEventBefore } from './events-ahead.ts';
import { type Extended, extendedUntil } from './extended-until.ts';
import type { DueOutcome, Window } from './obligation.ts';

export type Dated = Extract<DueOutcome, { kind: 'dated' }>;

/** The outcome, and what is to be said of an extension. */
export function dateOutcome(
  bound: Extract<Bound, { kind: 'due' }>,
  grounds: Grounds,
): { outcome: Dated; said: Extended } {
  const { duty } = grounds;
  const replaceBy = replaceByDay(duty, bound.on, grounds);
  const comesEarlier = duty.replaceBy?.kind === 'last_event_before_expiry' && replaceBy !== null;
  const dueOn = comesEarlier ? replaceBy : bound.on;
  const windows = windowsAround(duty, dueOn);
  const latest = latestPermitted(bound, grounds);
  const base = duty.expires ? bound.on : (windows[0]?.closes ?? dueOn);
  const said = extendedUntil(grounds, latest);
  const outcome: Dated = {
    kind: 'dated',
    dueOn,
    overdueAfter: said.until === null ? base : (Math.max(base, said.until) as Day),
    ...(duty.expires && { expiresOn: bound.on }),
    ...(replaceBy !== null && { replaceBy }),
    ...(latest !== null && { latestPermittedOn: latest }),
    windows,
  };
  return { outcome, said };
}

function replaceByDay(duty: Duty, expiry: Day, { events }: Grounds): Day | null {
  switch (duty.replaceBy?.kind) {
    case undefined:
      return null;
    case 'first_event_after_expiry':
      return firstEventFrom(events, duty.replaceBy.event, expiry);
    case 'last_event_before_expiry':
      return lastEventBefore(events, duty.replaceBy.event, expiry);
  }
}

function windowsAround(duty: Duty, due: Day): readonly Window[] {
  if (!duty.window) return [];
  return [{ opens: subtract(due, periodOf(duty.window.before)), closes: addPeriod(due, periodOf(duty.window.after)) }];
}

function subtract(day: Day, period: Period): Day {
  return addDays(addMonths(day, -period.months), -period.days);
}

/** How far it could be put off. It never counts by itself. */
function latestPermitted(bound: Extract<Bound, { kind: 'due' }>, grounds: Grounds): Day | null {
  const { extension } = grounds.duty;
  switch (extension?.kind) {
    case undefined:
      return null;
    case 'authority_record': {
      const done = grounds.last.fact?.on.first;
      return done === undefined ? null : addPeriod(done, periodOf(extension.max));
    }
    case 'next_event': {
      const next = firstEventFrom(grounds.events, extension.event, bound.on);
      return next !== null && next <= addPeriod(bound.on, periodOf(extension.within)) ? next : null;
    }
  }
}

/** What the outcome comes to, to end the sentence: "so it is due by 22 September 2026". */
export function outcomeInWords(outcome: Dated, duty: Duty, said: Extended): string {
  const due = dayInWords(outcome.dueOn);
  const end = duty.action.kind === 'withdraw' ? `so it is to be withdrawn by ${due}` : `so it is due by ${due}`;
  const parts = [outcome.expiresOn === undefined ? end : `so it is out of date after ${dayInWords(outcome.expiresOn)}`];
  if (outcome.replaceBy !== undefined) parts.push(`and is to be replaced by ${dayInWords(outcome.replaceBy)}`);
  const [window] = outcome.windows;
  if (window) parts.push(`in the window from ${dayInWords(window.opens)} to ${dayInWords(window.closes)}`);
  if (said.until !== null) parts.push(`extended on record to ${dayInWords(said.until)}`);
  return parts.join(', ').replace(', and is', ' and is');
}
