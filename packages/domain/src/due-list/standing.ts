/** How an obligation stands on a given day. */
import type { Day } from '../calendar/day.ts';
import type { DueOutcome } from '../item/obligation.ts';

export const STANDINGS = ['overdue', 'due', 'in_date', 'unknown'] as const;
export type Standing = (typeof STANDINGS)[number];

/** Days ahead of the due day from which a thing is called due. House convention, no source. */
export const LEAD_DAYS = 30;

/**
 * In date on the last day, overdue on the day after `overdueAfter`; due inside the lead time and inside
 * a window that is still open. An undated outcome stays unknown however late it gets.
 */
export function standingOn(outcome: DueOutcome, day: Day, leadDays: number = LEAD_DAYS): Standing {
  switch (outcome.kind) {
    case 'undated':
      return 'unknown';
    case 'dated':
      if (day > outcome.overdueAfter) return 'overdue';
      return day >= outcome.dueOn - leadDays ? 'due' : 'in_date';
  }
}
