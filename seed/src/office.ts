/** Who enters the demo fleets, and when: through the actions, in office hours. */
import type { ActionContext } from '@garboard/actions/context.ts';
import type { Result } from '@garboard/actions/result.ts';
import type { Db } from '@garboard/db/pool.ts';
import { wholeFleet } from '@garboard/db/scope.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';

const DAY_MS = 86_400_000;
const MORNING_MS = 8 * 3_600_000;
/** One entry after the other: what is written later is later, and no two things happen at one instant. */
const ENTRY_MS = 41_000;

/** Before the first entry of the day. */
export function morningOf(day: Day): Date {
  return new Date(day * DAY_MS + MORNING_MS);
}

/** What an action needs on a day; later each time. */
export type At = (day: Day) => ActionContext;

export function officeHours(db: Db, organisationId: string): At {
  let entries = 0;
  return (day) => {
    entries += 1;
    const now = new Date(morningOf(day).getTime() + entries * ENTRY_MS);
    return { ...wholeFleet(organisationId), db, actor: OFFICE, requestId: 'demo-fleets', now };
  };
}

/** Nobody signed in for this. */
const OFFICE = { kind: 'upkeep', id: '00000000-0000-7000-8000-000000000000', role: 'manager' } as const;

/** The plan is ours: an action that refuses it is a fault. */
export function wanted<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(`demo fleets: ${JSON.stringify(result.failure)}`);
}
