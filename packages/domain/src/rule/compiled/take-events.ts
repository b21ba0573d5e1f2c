/** The events of the item's vessel as at the cut, and the questions that rules ask of them: as in `events-ahead.ts`. */
import { APPOINTMENTS } from '../../item/events-ahead.ts';
import type { Aboard } from './aboard.ts';
import { eventBits, NO_DAY } from './codes.ts';

const KEPT_AHEAD = eventBits([...APPOINTMENTS]);

/** Once for all items of a vessel that follow one another. */
export function takeEvents(vessel: number, aboard: Aboard): void {
  if (aboard.eventVessel === vessel) return;
  aboard.eventVessel = vessel;
  const { columns, cut } = aboard;
  const from = columns.vessel.eventsFrom[vessel] as number;
  const to = columns.vessel.eventsFrom[vessel + 1] as number;
  makeRoom(to - from, aboard);
  let count = 0;
  for (let row = from; row < to; row++) {
    if ((columns.events.recordedAt[row] as number) > cut.knownAt) continue;
    const event = columns.events.event[row] as number;
    const on = columns.events.on[row] as number;
    const planned = columns.events.planned[row] as number;
    if (on > cut.asOf && planned === 0 && ((KEPT_AHEAD >>> event) & 1) === 0) continue;
    aboard.event[count] = event;
    aboard.eventOn[count] = on;
    aboard.eventPlanned[count++] = on > cut.asOf ? 1 : planned;
  }
  aboard.eventCount = count;
}

function makeRoom(needed: number, aboard: Aboard): void {
  if (needed <= aboard.event.length) return;
  aboard.event = new Uint8Array(2 * needed);
  aboard.eventOn = new Int32Array(2 * needed);
  aboard.eventPlanned = new Uint8Array(2 * needed);
}

/** The first planned one after the last that was held and after `done`; `NO_DAY`. */
export function nextEventAfter(done: number, event: number, aboard: Aboard): number {
  let since = done;
  for (let at = 0; at < aboard.eventCount; at++) {
    if (aboard.event[at] === event && aboard.eventPlanned[at] === 0)
      since = Math.max(since, aboard.eventOn[at] as number);
  }
  return firstEvent(event, since + 1, aboard);
}

/** The first event of the kind on or after the day, planned or held; `NO_DAY`. */
export function firstEvent(event: number, day: number, aboard: Aboard): number {
  for (let at = 0; at < aboard.eventCount; at++) {
    if (aboard.event[at] === event && (aboard.eventOn[at] as number) >= day) return aboard.eventOn[at] as number;
  }
  return NO_DAY;
}

/** The last event of the kind on or before the day, if another comes after it; `NO_DAY`. */
export function lastEventBefore(event: number, day: number, aboard: Aboard): number {
  let last = NO_DAY;
  for (let at = 0; at < aboard.eventCount; at++) {
    if (aboard.event[at] === event && (aboard.eventOn[at] as number) <= day) last = aboard.eventOn[at] as number;
  }
  return firstEvent(event, day + 1, aboard) === NO_DAY ? NO_DAY : last;
}

/** The first mishap of those kinds after the day, planned ones apart; `NO_DAY`. */
export function firstHeldAfter(day: number, events: number, aboard: Aboard): number {
  for (let at = 0; at < aboard.eventCount; at++) {
    const on = aboard.eventOn[at] as number;
    const isMeant = aboard.eventPlanned[at] === 0 && ((events >>> (aboard.event[at] as number)) & 1) === 1;
    if (isMeant && on > day) return on;
  }
  return NO_DAY;
}
