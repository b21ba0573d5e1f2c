/** What a remedy would lead to, for somebody who asks "and if it were done on that day?". */
import type { Day } from '../calendar/day.ts';
import { addPeriod, parsePeriod } from '../calendar/period.ts';
import type { Remedy } from './obligation.ts';

/** The due date after the remedy is done on `day`; `null` when the act alone does not decide it. */
export function ifDoneOn(remedy: Remedy, day: Day): Day | null {
  const period = remedy.plus === null ? null : parsePeriod(remedy.plus);
  return period && addPeriod(day, period);
}
