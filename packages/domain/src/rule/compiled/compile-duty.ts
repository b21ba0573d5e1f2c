/** A duty made ready: every part of it that moves a day. */
import { addMonths, type Day } from '../../calendar/day.ts';
import { periodOf } from '../../calendar/words.ts';
import { standsFor } from '../override.ts';
import type { Duty, Extension, Limit, ReplaceBy } from '../rule.ts';
import { eventCode, kindCode, NO_DAY, NONE } from './codes.ts';
import { compileBulk } from './compile-bulk.ts';
import { compileApplies, type NumberValue } from './compile-condition.ts';
import { compileLimit, compileOwn } from './compile-limit.ts';
import type { DutyPlan, WindowPlan } from './plan.ts';
import { resetTable } from './resets.ts';
import { firstEvent, lastEventBefore } from './take-events.ts';

export function compileDuty(duty: Duty, numberValue: NumberValue, number: number): DutyPlan {
  const window = duty.window ? compileWindow(duty.window) : null;
  const kept = duty.window?.keepsDay ? window : null;
  const all = (limits: readonly Limit[] = []) => limits.map((limit) => compileLimit(limit, numberValue, kept));
  return {
    id: duty.id,
    number,
    action: { isWithdrawal: duty.action.kind === 'withdraw' },
    onlyFor: duty.onlyFor?.map(kindCode) ?? null,
    appliesWhen: compileApplies(duty.appliesWhen, numberValue),
    limits: all(duty.limits),
    ownLimits: duty.limits.map((limit) =>
      standsFor(limit, duty) ? compileOwn(limit) : compileLimit(limit, numberValue),
    ),
    cappedBy: all(duty.cappedBy),
    noLaterThan: all(duty.noLaterThan),
    fallback: all(duty.fallback),
    begins: duty.begins ? compileLimit({ kind: 'after', ...duty.begins }, numberValue) : null,
    window,
    extension: duty.extension ? compileExtension(duty.extension) : null,
    expires: duty.expires ?? false,
    replaceBy: duty.replaceBy ? compileReplaceBy(duty.replaceBy) : null,
    resets: resetTable(duty.resets),
    inBulk: compileBulk(duty),
  };
}

function compileWindow({ before, after }: NonNullable<Duty['window']>): WindowPlan {
  const [back, on] = [periodOf(before), periodOf(after)];
  return {
    opens: (due) => addMonths(due as Day, -back.months) - back.days,
    closes: (due) => addMonths(due as Day, on.months) + on.days,
  };
}

/** How far the date could be put off; `NO_DAY`: no further. */
function compileExtension(extension: Extension): NonNullable<DutyPlan['extension']> {
  switch (extension.kind) {
    case 'authority_record': {
      const { months, days } = periodOf(extension.max);
      return (_, { last, columns }) =>
        last === NONE ? NO_DAY : addMonths(columns.facts.first[last] as Day, months) + days;
    }
    case 'next_event': {
      const event = eventCode(extension.event);
      const { months, days } = periodOf(extension.within);
      return (on, aboard) => {
        const next = firstEvent(event, on, aboard);
        return next <= addMonths(on as Day, months) + days ? next : NO_DAY;
      };
    }
  }
}

function compileReplaceBy(replaceBy: ReplaceBy): NonNullable<DutyPlan['replaceBy']> {
  const event = eventCode(replaceBy.event);
  switch (replaceBy.kind) {
    case 'first_event_after_expiry':
      return { comesEarlier: false, day: (on, aboard) => firstEvent(event, on, aboard) };
    case 'last_event_before_expiry':
      return { comesEarlier: true, day: (on, aboard) => lastEventBefore(event, on, aboard) };
  }
}
