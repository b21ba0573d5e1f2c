/**
 * Duties of the commonest shapes, made ready to be dated for many items in one go: so many months after one date,
 * or a printed one, and the earliest binds. Every other duty is dated item by item.
 */
import { periodOf } from '../../calendar/words.ts';
import type { Duty, Limit } from '../rule.ts';

/** Whose date it counts from: the last act that counts, the manufacture, the fitting, or the print itself. */
export type BulkStart = 'last' | 'made' | 'fitted' | 'printed';

export type BulkLimit = {
  readonly from: BulkStart;
  readonly months: number;
  readonly days: number;
  readonly wholeMonths: boolean;
};

/** For an item of which nothing is known but its facts: a figure of its own, or a date given as an attribute, is missing. */
export type BulkDuty = {
  readonly limits: readonly BulkLimit[];
  readonly fallback: readonly BulkLimit[];
  readonly begins: BulkLimit | null;
};

/** `null` where some part of the duty asks more of an item than its own dates. */
export function compileBulk(duty: Duty): BulkDuty | null {
  const { replaceBy, cappedBy, noLaterThan, extension, window } = duty;
  const asksMore = replaceBy ?? cappedBy ?? noLaterThan ?? window?.keepsDay;
  if (asksMore !== undefined || extension?.kind === 'next_event') return null;
  const limits = bulkLimits(duty.limits);
  const fallback = bulkLimits(duty.fallback ?? []);
  const begins = duty.begins ? bulkLimit({ kind: 'after', ...duty.begins }) : null;
  if (limits === null || fallback === null || begins === OTHER || begins === MISSING) return null;
  if (begins !== null && fallback.length > 0) return null;
  return { limits, fallback, begins };
}

const OTHER = 'other';
const MISSING = 'missing';

function bulkLimits(limits: readonly Limit[]): readonly BulkLimit[] | null {
  const all = limits.map(bulkLimit);
  if (all.includes(OTHER)) return null;
  return all.filter((each) => typeof each === 'object');
}

const STARTS = { last_done: 'last', manufactured: 'made', installed: 'fitted', first_failed: null } as const;

function bulkLimit(limit: Limit): BulkLimit | typeof OTHER | typeof MISSING {
  if (limit.kind === 'given') return MISSING;
  if (limit.kind === 'printed')
    return limit.renewedBy === undefined ? { from: 'printed', months: 0, days: 0, wholeMonths: false } : OTHER;
  if (limit.kind !== 'after') return OTHER;
  const { counting = 'days', plus } = limit;
  const from = STARTS[limit.from];
  const isCommon = plus.kind === 'fixed' || plus.kind === 'own_figure';
  if (from === null || !isCommon || (counting !== 'days' && counting !== 'whole_months')) return OTHER;
  const period = plus.kind === 'fixed' ? plus.period : plus.otherwise;
  return period === undefined ? MISSING : { from, ...periodOf(period), wholeMonths: counting === 'whole_months' };
}
