/** From the day that binds to every date that follows from it. */
import type { Day } from '../calendar/day.ts';
import { addPeriod, backwards } from '../calendar/period.ts';
import { periodOf } from '../calendar/words.ts';
import type { Duty } from '../rule/rule.ts';
import type { Bound } from './bind.ts';
import { firstEventFrom, lastEventBefore } from './events-ahead.ts';
import { type Extended, extendedUntil } from './extended-until.ts';
import { dueFrom } from './lead-time.ts';
import type { Grounds } from './limit-count.ts';
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
  const runsOut = duty.expires && bound.binds.source.kind !== 'next_event';
  const windows = upTo(bound.latest, windowsOf(bound, duty, dueOn));
  const latest = latestPermitted(bound, grounds);
  const base = runsOut ? bound.on : (windows.at(-1)?.closes ?? dueOn);
  const said = extendedUntil(grounds, latest);
  const outcome: Dated = {
    kind: 'dated',
    dueFrom: dueFrom(dueOn, comesEarlier ? null : (bound.binds.countedFrom ?? null)),
    dueOn,
    overdueAfter: said.until === null ? base : (Math.max(base, said.until) as Day),
    ...(runsOut && { expiresOn: bound.on }),
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

/** What is due at once has no window. */
function windowsOf({ binds }: Extract<Bound, { kind: 'due' }>, duty: Duty, due: Day): readonly Window[] {
  if (binds.windows.length > 0) return binds.windows;
  if (!duty.window || binds.source.kind === 'triggered') return [];
  const opens = addPeriod(due, backwards(periodOf(duty.window.before)));
  return [{ opens, closes: addPeriod(due, periodOf(duty.window.after)) }];
}

function upTo(latest: Day | null, windows: readonly Window[]): readonly Window[] {
  if (latest === null) return windows;
  return windows
    .filter(({ opens }) => opens <= latest)
    .map(({ opens, closes }) => ({ opens, closes: Math.min(closes, latest) as Day }));
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
