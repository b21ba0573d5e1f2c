/** The vessel's events as a rule sees them: what is planned, and what lies before or after a day. */
import type { Day } from '../calendar/day.ts';
import type { VesselEvent, VesselEventKind } from '../vessel/situation.ts';
import { isKnown } from './facts-on-record.ts';
import type { Cut } from './unit-aboard.ts';

/** What stays ahead until it is held. */
export const APPOINTMENTS: ReadonlySet<VesselEventKind> = new Set([
  'inspection',
  'haul_out',
  'liferaft_service',
  'race_start',
]);

/**
 * The events as at the cut, in order of day. An appointment after the day was still ahead of it, so it
 * counts as planned; a mishap after the day had not happened.
 */
export function eventsAsAt(events: readonly VesselEvent[], cut: Cut): readonly VesselEvent[] {
  const asOf = cut.asOf ?? Number.POSITIVE_INFINITY;
  return events
    .filter((event) => isKnown(event.recordedAt, cut.knownAt))
    .filter((event) => event.on <= asOf || event.planned || APPOINTMENTS.has(event.event))
    .map((event) => (event.on > asOf ? { ...event, planned: true } : event))
    .sort((a, b) => a.on - b.on || (a.id < b.id ? -1 : 1));
}

/** The first planned one after the last that was held and after `done`. A plan that passed unheld stays the next. */
export function nextEvent(events: readonly VesselEvent[], kind: VesselEventKind, done: Day | null): VesselEvent | null {
  const ofKind = events.filter((event) => event.event === kind);
  const held = ofKind.findLast((event) => !event.planned)?.on;
  const since = Math.max(held ?? Number.NEGATIVE_INFINITY, done ?? Number.NEGATIVE_INFINITY);
  return ofKind.find((event) => event.on > since) ?? null;
}

/** The first event of the kind on or after the day, planned or held. */
export function firstEventFrom(events: readonly VesselEvent[], kind: VesselEventKind, day: Day): Day | null {
  return events.find((event) => event.event === kind && event.on >= day)?.on ?? null;
}

/** The last event of the kind on or before the day, if another comes after it. */
export function lastEventBefore(events: readonly VesselEvent[], kind: VesselEventKind, day: Day): Day | null {
  const ofKind = events.filter((event) => event.event === kind);
  const last = ofKind.findLast((event) => event.on <= day)?.on ?? null;
  return ofKind.some((event) => event.on > day) ? last : null;
}
