/** From which day on a thing is called due, before its due day. */
import { addDays, type Day, daysBetween } from '../calendar/day.ts';

/** Days ahead of the due day from which a thing is called due. House convention, no source. */
const LEAD_DAYS = 30;
/** But never for more than a third of its interval, or a weekly duty would be due for ever. House convention, no source. */
const LEAST_SHARES = 3;

/** `countedFrom`: the day from which the interval runs; `null` where there is none, as with a printed date. */
export function dueFrom(dueOn: Day, countedFrom: Day | null): Day {
  const interval = countedFrom === null ? Number.POSITIVE_INFINITY : Math.max(0, daysBetween(countedFrom, dueOn));
  return addDays(dueOn, -Math.min(LEAD_DAYS, Math.floor(interval / LEAST_SHARES)));
}
