/** A limit made ready: one entry for each shape, the same as `countLimit` for days. */
import { addMonths, type Day } from '../../calendar/day.ts';
import { periodOf } from '../../calendar/words.ts';
import type { Limit } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { attributeCode, eventCode, NO_DAY, NONE, NOT_OWED, testCode } from './codes.ts';
import { anniversaryDay, givenAnniversaryDay, oneOfDay } from './compile-anniversary.ts';
import { expiryDay, onceDay } from './compile-certificate.ts';
import type { NumberValue } from './compile-condition.ts';
import { triggeredDay } from './compile-event.ts';
import { compileInterval, type IntervalPlan, ownInterval } from './compile-interval.ts';
import { runningHoursDay } from './compile-running-hours.ts';
import { fittedRow, isRenewed, madeRow, type OwnPrint, printAmong, printedRow } from './dates-aboard.ts';
import type { LimitPlan, WindowPlan } from './plan.ts';
import { doesCount, firstFailedAfter } from './resets.ts';
import { nextEventAfter } from './take-events.ts';

type Of<Kind extends Limit['kind']> = Extract<Limit, { kind: Kind }>;
type LimitDay = LimitPlan['day'];
/** The duty's window, where what is done inside it counts as done on the due day. */
type KeptWindow = WindowPlan | null;

export function compileLimit(limit: Limit, number: NumberValue, window: KeptWindow = null): LimitPlan {
  return { kind: limit.kind, day: dayOfLimit(limit, number, window) };
}

/** The limit with the organisation's own interval in place of its own. */
export function compileOwn(limit: Of<'after'>): LimitPlan {
  return { kind: 'after', day: afterDay(limit, ownInterval(limit.counting ?? 'days'), null) };
}

function dayOfLimit(limit: Limit, number: NumberValue, window: KeptWindow): LimitDay {
  switch (limit.kind) {
    case 'after':
      return afterDay(limit, compileInterval(limit.plus, limit.counting ?? 'days', number), window);
    case 'printed':
      return printedDay(limit);
    case 'given':
      return givenDay(limit);
    case 'next_event': {
      const event = eventCode(limit.event);
      return (aboard) => nextEventAfter(lastFirst(aboard), event, aboard);
    }
    case 'certificate_expiry':
      return expiryDay(limit, number);
    case 'anniversary':
      return anniversaryDay(limit, number);
    case 'one_of_anniversaries':
      return oneOfDay(limit, number);
    case 'once_in_certificate':
      return onceDay(limit, number);
    case 'given_anniversary':
      return givenAnniversaryDay(limit);
    case 'running_hours':
      return runningHoursDay(limit);
    case 'before_event':
      return beforeEventDay(limit);
    case 'triggered':
      return triggeredDay(limit);
    case 'deadline_set':
      return deadlineDay;
  }
}

/** The first day that the last act can mean; before every day where there is none. */
function lastFirst({ last, columns }: Aboard): number {
  return last === NONE ? NOT_OWED : (columns.facts.first[last] as number);
}

function afterDay({ from }: Of<'after'>, interval: IntervalPlan, window: KeptWindow): LimitDay {
  const after = (row: number, aboard: Aboard) =>
    row === NONE ? NO_DAY : interval(aboard.columns.facts.first[row] as number, aboard);
  switch (from) {
    case 'last_done':
      if (window !== null) return (aboard) => afterKeptDay(interval, window, aboard);
      return (aboard) => after(aboard.last, aboard);
    case 'manufactured':
      return (aboard) => after(madeRow(aboard), aboard);
    case 'installed':
      return (aboard) => after(fittedRow(aboard), aboard);
    case 'first_failed':
      return (aboard) => {
        const at = firstFailedAfter(aboard.lastAt, aboard.resets, aboard);
        return at === NONE ? NOT_OWED : after(aboard.rows[at] as number, aboard);
      };
  }
}

/** Along every act that counts: one inside the window around its due day counts as done on that day. */
function afterKeptDay(interval: IntervalPlan, window: WindowPlan, aboard: Aboard): number {
  let due = NO_DAY;
  for (let at = 0; at <= aboard.lastAt; at++) {
    const row = aboard.rows[at] as number;
    if (!doesCount(aboard.resets, aboard, row)) continue;
    const on = aboard.columns.facts.first[row] as number;
    const isInside = due !== NO_DAY && on >= window.opens(due) && on <= window.closes(due);
    due = interval(isInside ? due : on, aboard);
  }
  return due;
}

function printedDay({ renewedBy }: Of<'printed'>): LimitDay {
  const lastOf = (row: number, { columns }: Aboard) => (row === NONE ? NO_DAY : (columns.facts.last[row] as number));
  if (renewedBy === undefined) return (aboard) => lastOf(printedRow(aboard), aboard);
  const test = testCode(renewedBy);
  return (aboard) => lastOf(printAmong(isOfNewPart, aboard, renewalRow(test, aboard), NONE), aboard);
}

const isOfNewPart: OwnPrint = (print, aboard, renewal) => renewal === NONE || !isRenewed(print, renewal, aboard);

function renewalRow(test: number, aboard: Aboard): number {
  for (let at = aboard.count - 1; at >= 0; at--) {
    const row = aboard.rows[at] as number;
    if (aboard.columns.facts.test[row] === test && doesCount(aboard.resets, aboard, row)) return row;
  }
  return NONE;
}

function givenDay({ attribute, plus }: Of<'given'>): LimitDay {
  const at = attributeCode(attribute);
  if (plus === undefined) return ({ dateLast }) => dateLast[at] as number;
  const { months, days } = periodOf(plus);
  return ({ dateFirst }) => (dateFirst[at] === NO_DAY ? NO_DAY : addMonths(dateFirst[at] as Day, months) + days);
}

/** The latest start that the last act covers; with no act on record, the day before the next start planned. */
function beforeEventDay({ event, within }: Of<'before_event'>): LimitDay {
  const code = eventCode(event);
  const { months, days } = periodOf(within);
  return (aboard) => {
    if (aboard.last !== NONE) return addMonths(lastFirst(aboard) as Day, months) + days;
    const start = nextEventAfter(NOT_OWED, code, aboard);
    return start === NO_DAY ? NO_DAY : start - 1;
  };
}

/** The day set at the last failure that names one. */
const deadlineDay: LimitDay = (aboard) => {
  const { until } = aboard.columns.facts;
  let day = NOT_OWED;
  for (let at = aboard.lastAt; ; ) {
    at = firstFailedAfter(at, aboard.resets, aboard);
    if (at === NONE) return day;
    const set = until[aboard.rows[at] as number] as number;
    if (day === NOT_OWED || set !== NO_DAY) day = set;
  }
};
