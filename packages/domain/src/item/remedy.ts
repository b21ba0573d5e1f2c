/** What would move the date, and where to. */
import type { Day } from '../calendar/day.ts';
import { addPeriod, backwards, parsePeriod } from '../calendar/period.ts';
import { periodOf, periodOfMonths } from '../calendar/words.ts';
import type { Condition, Interval, IntervalOption, Limit, Reset } from '../rule/rule.ts';
import { wholeNumberOf } from './attribute.ts';
import { beginningOf } from './bind.ts';
import { AUTHORITY } from './extended-until.ts';
import { dayOfFact } from './facts-on-record.ts';
import type { Grounds } from './limit-count.ts';
import type { Remedy } from './obligation.ts';
import { type Particulars, weighCondition } from './weigh-condition.ts';

/** The acts that would move the date; `due` is the one that there is now. */
export function remediesOf(grounds: Grounds, due: Day | null): readonly Remedy[] {
  const { duty } = grounds;
  const acts: Remedy[] = duty.resets.map((reset) => ({
    act: reset.act,
    ...(reset.tests?.[0] && { test: reset.tests[0] }),
    by: reset.by,
    plus: plusOf(reset, grounds),
    ...keptDay(grounds, due),
  }));
  if (duty.action.kind === 'withdraw') acts.push({ act: 'withdrawn', by: [], plus: null });
  if (duty.extension) acts.push({ act: 'extended', by: AUTHORITY, plus: null });
  return acts;
}

function keptDay({ duty: { window } }: Grounds, due: Day | null): Pick<Remedy, 'keeps'> {
  if (!window?.keepsDay || due === null) return {};
  const opens = addPeriod(due, backwards(periodOf(window.before)));
  return { keeps: { on: due, opens, closes: addPeriod(due, periodOf(window.after)) } };
}

/** The due date after the remedy is done on `day`; `null` when the act alone does not decide it. */
export function ifDoneOn(remedy: Remedy, day: Day): Day | null {
  const period = remedy.plus === null ? null : parsePeriod(remedy.plus);
  const { keeps } = remedy;
  const from = keeps && keeps.opens <= day && day <= keeps.closes ? keeps.on : day;
  return period && addPeriod(from, period);
}

/** Told only where it is the same on whichever day the act is done. */
function plusOf(reset: Reset, grounds: Grounds): string | null {
  const [limit, ...others] = grounds.duty.limits.filter(({ kind }) => kind !== 'triggered');
  if (!limit || others.length > 0 || grounds.duty.cappedBy || grounds.duty.noLaterThan) return null;
  if (limit.kind === 'before_event') return limit.within;
  if (!countsFrom(limit, reset)) return null;
  if (limit.counting !== undefined || !isPastBeginning(grounds)) return null;
  return steadyPeriod(limit.plus, grounds);
}

function countsFrom(limit: Limit, reset: Reset): limit is Extract<Limit, { kind: 'after' }> {
  return limit.kind === 'after' && limit.from === (reset.act === 'replaced' ? 'installed' : 'last_done');
}

/** A duty that begins later counts from the act only once its beginning is known to be past. */
function isPastBeginning(grounds: Grounds): boolean {
  const begins = beginningOf(grounds);
  const { fact } = grounds.last;
  return begins === null || (begins.on !== null && fact !== null && dayOfFact(fact) >= begins.on);
}

function steadyPeriod(interval: Interval, of: Particulars): string | null {
  switch (interval.kind) {
    case 'fixed':
      return interval.period;
    case 'own_figure': {
      const months = wholeNumberOf(of.attributes, interval.attribute);
      return months === null ? (interval.otherwise ?? null) : periodOfMonths(months);
    }
    case 'by_condition': {
      const option = interval.options.find(({ all }) =>
        all.filter(isSteady).every((one) => weighCondition(one, of) === 'holds'),
      );
      return option && isSteadyOption(option) ? option.period : null;
    }
    case 'by_age':
      return null;
  }
}

function isSteadyOption(option: IntervalOption): boolean {
  return option.all.every(isSteady);
}

/** Whether the condition comes out the same on any day. */
function isSteady(condition: Condition): boolean {
  switch (condition.kind) {
    case 'kind_is':
    case 'attribute_is':
    case 'attribute_below':
      return true;
    case 'valid_through_next':
    case 'younger_than':
      return false;
  }
}
