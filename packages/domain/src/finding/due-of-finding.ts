/**
 * The day by which an open finding wants somebody, and why that day. House convention, no source: the days of
 * each urgency are the organisation's own figures; a rule's or an authority's own limit comes before them.
 */
import { addDays, type Day, dateOfDay, dayOf, dayOfText, formatDay } from '../calendar/day.ts';
import type { IsoDay } from './entry.ts';
import type { Finding } from './finding.ts';
import { isOpen } from './next-state.ts';

/** The first of the days after `since`. */
export const nextAfter = (days: readonly IsoDay[], since: IsoDay): IsoDay | null =>
  days.filter((day) => day > since).toSorted()[0] ?? null;

/** `MM-DD` to `MM-DD`; `null` where the organisation has said nothing of a season. */
export type Season = { readonly from: string; readonly to: string } | null;

export type Calendar = {
  readonly season: Season;
  /** Of the vessel, by day: planned haul-outs and planned visits. */
  readonly haulOuts: readonly IsoDay[];
  readonly visits: readonly IsoDay[];
  readonly withinWeeksDays: number;
};

export type DueOfFinding =
  | { readonly kind: 'ended' }
  | { readonly kind: 'dated'; readonly source: 'finding' | 'deferral'; readonly on: IsoDay; readonly because: string }
  | { readonly kind: 'undated'; readonly because: string };

export function dueOfFinding(finding: Finding, calendar: Calendar): DueOfFinding {
  const { remedy, limit } = finding;
  if (!isOpen(remedy.state)) return { kind: 'ended' };
  if (remedy.state === 'deferred' || remedy.state === 'accepted')
    return dated(remedy.reviewOn, REVIEW[remedy.state], 'deferral');
  const own = byUrgency(finding, calendar);
  const isBound = limit !== null && (own.kind !== 'dated' || limit.on < own.on);
  return isBound ? dated(limit.on, `Set by ${limit.source}.`) : own;
}

const REVIEW = {
  deferred: 'Put off; it is looked at again on that day.',
  accepted: 'Accepted as it is; it is looked at again on that day.',
} as const;

function byUrgency({ urgency, urgentBy, urgencySince }: Finding, calendar: Calendar): DueOfFinding {
  switch (urgency) {
    case 'before_use':
      return dated(urgencySince, 'To be dealt with before she is used again: due since it was said.');
    case 'within_weeks':
      return urgentBy === null
        ? dated(
            after(urgencySince, calendar.withinWeeksDays),
            `Within ${calendar.withinWeeksDays} days of ${urgencySince}.`,
          )
        : dated(urgentBy, 'The surveyor’s own day.');
    case 'this_season':
      return atSeasonsEnd(urgencySince, calendar.season);
    case 'next_lay_up':
      return (
        atNext(calendar.haulOuts, urgencySince, 'The planned haul-out.') ?? atSeasonsEnd(urgencySince, calendar.season)
      );
    case 'observe':
      return (
        atNext(calendar.visits, urgencySince, 'The next planned visit.') ?? {
          kind: 'undated',
          because: 'At the next visit; none is planned.',
        }
      );
  }
}

function atNext(days: readonly IsoDay[], since: IsoDay, because: string): DueOfFinding | null {
  const next = nextAfter(days, since);
  return next === null ? null : dated(next, because);
}

function atSeasonsEnd(since: IsoDay, season: Season): DueOfFinding {
  if (!season) return { kind: 'undated', because: 'By the season’s end; the organisation has not said when that is.' };
  return dated(formatDay(nextOf(season.to, dayOfText(since))), 'The season’s end.');
}

/** The first such day of a year that is not before `since`. 29 February is the last of February where there is none. */
function nextOf(monthDay: string, since: Day): Day {
  const [month = 1, dayOfMonth = 1] = monthDay.split('-').map(Number);
  const { year } = dateOfDay(since);
  const inYear = (of: number) => Math.min(dayOf(of, month, dayOfMonth), dayOf(of, month + 1, 0)) as Day;
  return inYear(year) >= since ? inYear(year) : inYear(year + 1);
}

const after = (day: IsoDay, days: number): IsoDay => formatDay(addDays(dayOfText(day), days));

const dated = (on: IsoDay, because: string, source: 'finding' | 'deferral' = 'finding'): DueOfFinding => ({
  kind: 'dated',
  source,
  on,
  because,
});
