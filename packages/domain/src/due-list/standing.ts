/** How an obligation stands on a given day. */
import type { Day } from '../calendar/day.ts';
import type { DueOutcome, Obligation, Suspended } from '../item/obligation.ts';
import { suspendedOn } from '../item/suspension.ts';

export const STANDINGS = ['overdue', 'due', 'in_date', 'unknown'] as const;
export type Standing = (typeof STANDINGS)[number];

/** `suspended`: the span that holds on the day. What is owed in it is owed before she returns to service. */
export type Stands = { readonly standing: Standing; readonly suspended: Suspended | null };

/** A duty that is suspended on the day is not overdue on it: past its day it stays due. */
export function standsOn({ outcome, explanation }: Pick<Obligation, 'outcome' | 'explanation'>, day: Day): Stands {
  const suspended = suspendedOn(explanation, day);
  const standing = standingOn(outcome, day);
  return { standing: suspended && standing === 'overdue' ? 'due' : standing, suspended };
}

/**
 * In date on the last day, overdue on the day after `overdueAfter`; due inside the lead time and inside
 * a window that is still open. An undated outcome stays unknown however late it gets.
 */
export function standingOn(outcome: DueOutcome, day: Day): Standing {
  switch (outcome.kind) {
    case 'undated':
      return 'unknown';
    case 'dated':
      if (day > outcome.overdueAfter) return 'overdue';
      return day >= outcome.dueFrom ? 'due' : 'in_date';
  }
}

/** How it is counted: what is suspended on the day is a group of its own, whatever its date; unknown stays unknown. */
export const COUNTED_AS = [...STANDINGS, 'suspended'] as const;
export type CountedAs = (typeof COUNTED_AS)[number];

export function countedAs(obligation: Pick<Obligation, 'outcome' | 'explanation'>, day: Day): CountedAs {
  const { standing, suspended } = standsOn(obligation, day);
  return suspended && standing !== 'unknown' ? 'suspended' : standing;
}
