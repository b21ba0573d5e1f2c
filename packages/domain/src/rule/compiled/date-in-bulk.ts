/** A duty dated for all items of a chunk in one go: the same days as `dateDuty` gives for each. */
import { addMonths, type Day, endOfMonth } from '../../calendar/day.ts';
import type { Aboard } from './aboard.ts';
import { type Chunk, lookUpLast } from './chunk.ts';
import { NO_DAY, NONE } from './codes.ts';
import type { BulkDuty, BulkLimit } from './compile-bulk.ts';
import { type Dates, makeRoom } from './dates.ts';
import type { FactColumns } from './item-columns.ts';
import type { DutyPlan } from './plan.ts';

export type BulkPlan = DutyPlan & { readonly inBulk: BulkDuty };

export function dateInBulk(duty: BulkPlan, weight: number, chunk: Chunk, aboard: Aboard, dates: Dates): void {
  const { limits, fallback, begins } = duty.inBulk;
  const { facts } = aboard.columns;
  lookUpLast(duty.resets, chunk, aboard.columns);
  chunk.due.fill(NO_DAY, 0, chunk.count);
  for (const limit of limits) take(limit, chunk.due, chunk, facts);
  if (begins !== null) holdBack(begins, chunk, facts);
  if (fallback.length > 0) fillIn(fallback, chunk, facts);
  makeRoom(chunk.count, dates);
  putDown(duty, weight, chunk, dates);
  follow(duty, chunk, aboard, dates);
  dates.count += chunk.count;
}

/** The earliest binds. */
function take(limit: BulkLimit, due: Int32Array, chunk: Chunk, { first, last }: FactColumns): void {
  const { from, months, days, wholeMonths } = limit;
  const { [from]: rows, count } = chunk;
  for (let at = 0; at < count; at++) {
    const row = rows[at] as number;
    if (row === NONE) continue;
    const on = from === 'printed' ? (last[row] as number) : after(first[row] as Day, months, days, wholeMonths);
    if (on < (due[at] as number)) due[at] = on;
  }
}

function after(start: Day, months: number, days: number, wholeMonths: boolean): number {
  const on = (addMonths(start, months) + days) as Day;
  return wholeMonths ? endOfMonth(on) : on;
}

/** A duty that begins later has no date before; where it was never done, it is due as it begins. */
function holdBack(begins: BulkLimit, chunk: Chunk, facts: FactColumns): void {
  const { due, last, other: begin, count } = chunk;
  begin.fill(NO_DAY, 0, count);
  take(begins, begin, chunk, facts);
  for (let at = 0; at < count; at++) {
    if (begin[at] === NO_DAY) continue;
    const row = last[at] as number;
    const isBefore = row === NONE || (facts.day[row] as number) < (begin[at] as number);
    if (row === NONE || (due[at] === NO_DAY && isBefore)) due[at] = begin[at] as number;
    else if (due[at] !== NO_DAY) due[at] = Math.max(due[at] as number, begin[at] as number);
  }
}

/** Where every date that a limit counts from is missing. */
function fillIn(fallback: readonly BulkLimit[], chunk: Chunk, facts: FactColumns): void {
  const { due, other, count } = chunk;
  if (!due.subarray(0, count).includes(NO_DAY)) return;
  other.fill(NO_DAY, 0, count);
  for (const limit of fallback) take(limit, other, chunk, facts);
  for (let at = 0; at < count; at++) if (due[at] === NO_DAY) due[at] = other[at] as number;
}

function putDown({ number, action, expires }: DutyPlan, weight: number, chunk: Chunk, { rows, count }: Dates): void {
  const to = count + chunk.count;
  rows.duty.fill(number, count, to);
  rows.tightened.fill(0, count, to);
  rows.withdrawal.fill(action.isWithdrawal ? 1 : 0, count, to);
  rows.weight.fill(weight, count, to);
  rows.replaceBy.fill(NO_DAY, count, to);
  rows.latestPermittedOn.fill(NO_DAY, count, to);
  const due = chunk.due.subarray(0, chunk.count);
  rows.item.set(chunk.items.subarray(0, chunk.count), count);
  rows.dueOn.set(due, count);
  rows.overdueAfter.set(due, count);
  if (expires) rows.expiresOn.set(due, count);
  else rows.expiresOn.fill(NO_DAY, count, to);
}

/** What else follows from the due day: the window's close, and how far an authority could put it off. */
function follow({ window, expires, extension }: DutyPlan, chunk: Chunk, aboard: Aboard, { rows, count }: Dates): void {
  const close = expires ? null : (window?.closes ?? null);
  if (close === null && extension === null) return;
  for (let at = 0; at < chunk.count; at++) {
    const on = chunk.due[at] as number;
    if (on === NO_DAY) continue;
    if (close !== null) rows.overdueAfter[count + at] = close(on);
    aboard.last = chunk.last[at] as number;
    if (extension !== null) rows.latestPermittedOn[count + at] = extension(on, aboard);
  }
}
