/**
 * An organisation's own figure in place of a published interval: from the maker's book, the insurer's
 * letter, or its own decision. It says who, when and why, and names the document.
 */
import type { Day } from '../calendar/day.ts';
import { addDays, parseDay } from '../calendar/day.ts';
import { addPeriod, type Period, parsePeriod } from '../calendar/period.ts';
import { periodInWords, periodOf } from '../calendar/words.ts';
import { isKnown } from '../item/facts-on-record.ts';
import type { Cut } from '../item/unit-aboard.ts';
import type { Duty, Interval, Limit, PeriodText, Rule } from './rule.ts';
import type { Weight } from './scheme.ts';

/** What can stand behind somebody's own figure. Nobody makes law or a certificate's terms. */
export const OVERRIDE_WEIGHTS = ['maker', 'insurer', 'own'] as const satisfies readonly Weight[];
export type OverrideWeight = (typeof OVERRIDE_WEIGHTS)[number];

export type Override = {
  readonly id: string;
  /** Of one item; `null`: of everything aboard that the rule bears on. */
  readonly itemId: string | null;
  readonly ruleId: string;
  readonly duty: string;
  readonly period: PeriodText;
  readonly weight: OverrideWeight;
  readonly decidedBy: string;
  readonly reason: string;
  readonly document: string;
  /** The first day on which it counts. */
  readonly from: Day;
  /** RFC 3339. */
  readonly recordedAt: string;
  /** The first day on which it counts no more, and when we learned it. */
  readonly ended: { readonly on: Day; readonly recordedAt: string } | null;
};

/** The one that counts: of those in force, the one that goes first. */
export function overrideInForce(
  overrides: readonly Override[],
  { ruleId, duty }: Pick<Override, 'ruleId' | 'duty'>,
  cut: Cut,
): Override | undefined {
  return inOrderOfPrecedence(
    overrides.filter((each) => each.ruleId === ruleId && each.duty === duty && isInForce(each, cut)),
  )[0];
}

/** The item's own before the vessel's, then the latest to take effect, then the latest entry. */
export function inOrderOfPrecedence(overrides: readonly Override[]): readonly Override[] {
  return overrides.toSorted(
    (a, b) =>
      Number(b.itemId !== null) - Number(a.itemId !== null) ||
      b.from - a.from ||
      Date.parse(b.recordedAt) - Date.parse(a.recordedAt) ||
      (a.id < b.id ? 1 : -1),
  );
}

function isInForce({ from, recordedAt, ended }: Override, { asOf, knownAt }: Cut): boolean {
  const day = asOf ?? Number.POSITIVE_INFINITY;
  const isOver = ended !== null && ended.on <= day && isKnown(ended.recordedAt, knownAt);
  return from <= day && isKnown(recordedAt, knownAt) && !isOver;
}

/** Law and a certificate's terms are kept whatever anybody's own figure says. */
export function isBinding({ weight }: Pick<Rule, 'weight'>): boolean {
  return weight === 'law' || weight === 'certificate';
}

/** `at`: which of the two given is to blame. `reason` follows its name: "must not be …". */
export type OverrideVerdict =
  | { readonly kind: 'accepted' }
  | { readonly kind: 'refused'; readonly at: 'duty' | 'period'; readonly reason: string };

/**
 * Whether `period` (ISO 8601) can stand in for the intervals of the duty. What binds can be tightened, never
 * loosened: from no day may it lead further than the shortest interval that the rule could give.
 */
export function judgeOverride(rule: Rule, duty: Duty, period: string): OverrideVerdict {
  const intervals = duty.limits.flatMap((limit) => (standsFor(limit, duty) ? [limit.plus] : []));
  if (intervals.length === 0) return refused('duty', 'has no interval that another figure could stand in for');
  const own = parsePeriod(period);
  if (!own || !isSensible(own)) return refused('period', `must be at least a day and at most ${MOST_YEARS} years`);
  const exceeded = isBinding(rule)
    ? intervals.flatMap(publishedPeriods).find((each) => !neverLater(own, periodOf(each)))
    : undefined;
  if (exceeded === undefined) return { kind: 'accepted' };
  const { publication, clause } = rule.source;
  const where = [publication, clause].filter(Boolean).join(', ');
  return refused(
    'period',
    `must not be longer than the ${periodInWords(exceeded)} that ${where || rule.id} asks for: what binds can be tightened, never loosened`,
  );
}

const refused = (at: 'duty' | 'period', reason: string): OverrideVerdict => ({ kind: 'refused', at, reason });

/** Nothing aboard is looked at less often than this. House convention, no source. */
export const MOST_YEARS = 50;

/** At least a day, at most fifty years. */
export function isSensible({ months, days }: Period): boolean {
  return months + days > 0 && months * 31 + days <= MOST_YEARS * 12 * 31;
}

type After = Extract<Limit, { kind: 'after' }>;

/**
 * Whether somebody's own figure takes the place of the limit's interval: of the one that the duty names first,
 * from whatever it counts. Where another of the duty's limits has another length, that one stays as published.
 */
export function standsFor(limit: Limit, { limits }: Pick<Duty, 'limits'>): limit is After {
  const first = limits.find(isAfter);
  return isAfter(limit) && JSON.stringify(limit.plus) === JSON.stringify(first?.plus);
}

function isAfter(limit: Limit): limit is After {
  return limit.kind === 'after';
}

/** Every interval that the rule itself could give; somebody's own figure is not published. */
function publishedPeriods(interval: Interval): readonly PeriodText[] {
  switch (interval.kind) {
    case 'fixed':
      return [interval.period];
    case 'own_figure':
      return interval.otherwise === undefined ? [] : [interval.otherwise];
    case 'by_condition':
      return interval.options.map(({ period }) => period);
    case 'by_age':
      return [interval.period, ...interval.bands.map(({ period }) => period)];
  }
}

/** Twelve years of starting days about a turn of century without a leap day: every length a period can have. */
const FIRST_START = parseDay('2092-01-01') as Day;
const STARTS = 4383;

function neverLater(own: Period, published: Period): boolean {
  for (let nth = 0; nth < STARTS; nth++) {
    const start = addDays(FIRST_START, nth);
    if (addPeriod(start, own) > addPeriod(start, published)) return false;
  }
  return true;
}
