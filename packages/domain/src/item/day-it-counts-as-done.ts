/** Where a window keeps the day: an act inside it counts as done on the day that it was due. */
import type { Day } from '../calendar/day.ts';
import { addPeriod, backwards } from '../calendar/period.ts';
import { periodOf } from '../calendar/words.ts';
import type { Duty, Limit } from '../rule/rule.ts';
import { countInterval } from './count-interval.ts';
import type { Fact } from './fact.ts';
import { actsThatCount } from './last-done.ts';
import type { Grounds } from './limit-count.ts';

/** Followed along every act that counts, as each due day comes from the act before; `last` is one of them. */
export function dayItCountsAsDone(
  last: Fact,
  { plus, counting }: Extract<Limit, { kind: 'after' }>,
  grounds: Grounds,
): Day {
  const { window } = grounds.duty;
  if (!window?.keepsDay) return last.on.first;
  let due: Day | null = null;
  let counts = last.on.first;
  for (const { on } of actsThatCount(grounds.facts, grounds.duty.resets)) {
    counts = due !== null && isInside(window, due, on.first) ? due : on.first;
    const next = countInterval(plus, counts, counting ?? 'days', grounds);
    due = next.kind === 'counted' ? next.on : null;
  }
  return counts;
}

function isInside({ before, after }: NonNullable<Duty['window']>, due: Day, day: Day): boolean {
  return day >= addPeriod(due, backwards(periodOf(before))) && day <= addPeriod(due, periodOf(after));
}
