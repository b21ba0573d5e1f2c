/** What would move the date, and where to. */
import type { Day } from '../calendar/day.ts';
import { addPeriod, parsePeriod } from '../calendar/period.ts';
import type { Limit, Reset } from '../rule/rule.ts';
import type { Grounds } from './count-limit.ts';
import { countInterval } from './count-interval.ts';
import { AUTHORITY } from './extended-until.ts';
import type { Remedy } from './obligation.ts';

/** The acts that would move the date. A period is the one that counts from the due day on. */
export function remediesOf(grounds: Grounds, due: Day | null): readonly Remedy[] {
  const { duty } = grounds;
  const acts: Remedy[] = duty.resets.map((reset) => ({
    act: reset.act,
    ...(reset.tests?.[0] && { test: reset.tests[0] }),
    by: reset.by,
    plus: plusOf(reset, grounds, due),
  }));
  if (duty.action.kind === 'withdraw') acts.push({ act: 'withdrawn', by: [], plus: null });
  if (duty.extension) acts.push({ act: 'extended', by: AUTHORITY, plus: null });
  return acts;
}

/** The due date after the remedy is done on `day`; `null` when a new print or plan will decide. */
export function ifDoneOn(remedy: Remedy, day: Day): Day | null {
  const period = remedy.plus === null ? null : parsePeriod(remedy.plus);
  return period && addPeriod(day, period);
}

/** Known only where the act alone decides the next date: one limit, which counts from the act. */
function plusOf(reset: Reset, grounds: Grounds, due: Day | null): string | null {
  const { duty } = grounds;
  const [limit] = duty.limits;
  if (!limit || duty.limits.length > 1 || duty.cappedBy || due === null || !countsFrom(limit, reset)) return null;
  const next = countInterval(limit.plus, due, limit.counting ?? 'days', grounds);
  return next.kind === 'counted' ? next.period : null;
}

function countsFrom(limit: Limit, reset: Reset): limit is Extract<Limit, { kind: 'after' }> {
  return limit.kind === 'after' && limit.from === (reset.act === 'replaced' ? 'installed' : 'last_done');
}
