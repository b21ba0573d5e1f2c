/** The dates that came of a run, in columns: a row for each obligation, and the order in which the explaining engine has them. */
import { NO_DAY } from './codes.ts';
import type { DutyDays } from './date-duty.ts';
import { FEW, withRoom } from './grow.ts';
import type { DutyPlan } from './plan.ts';

export type Dates = {
  /** Of each item: aboard, not yet aboard or withdrawn. */
  status: { readonly of: Uint8Array };
  /** How many rows there are. */
  count: number;
  rows: DateRows;
  /** Their numbers in order of item, and then as the catalogue has the duties. */
  order: { readonly of: Int32Array };
};

export type DateRows = {
  readonly item: Int32Array;
  /** The duty's number in the plan. */
  readonly duty: Uint16Array;
  /** The row of an organisation's own figure that stands beside a duty that binds. */
  readonly tightened: Uint8Array;
  readonly withdrawal: Uint8Array;
  readonly weight: Uint8Array;
  /** `NO_DAY` for none, here and below. */
  readonly dueOn: Int32Array;
  readonly overdueAfter: Int32Array;
  readonly expiresOn: Int32Array;
  readonly replaceBy: Int32Array;
  readonly latestPermittedOn: Int32Array;
};

/** Kept and used again, it grows no further than the largest run. */
export function emptyDates(): Dates {
  const [bytes, whole] = [() => new Uint8Array(FEW), () => new Int32Array(FEW)];
  return {
    status: { of: bytes() },
    count: 0,
    order: { of: whole() },
    rows: {
      ...{ item: whole(), duty: new Uint16Array(FEW), tightened: bytes(), withdrawal: bytes(), weight: bytes() },
      ...{ dueOn: whole(), overdueAfter: whole(), expiresOn: whole(), replaceBy: whole(), latestPermittedOn: whole() },
    },
  };
}

/** For `more` rows. */
export function makeRoom(more: number, dates: Dates): void {
  dates.rows = withRoom(dates.rows, dates.rows.item, dates.count + more);
}

export function startAnew(items: number, dates: Dates): void {
  dates.count = 0;
  dates.status = withRoom(dates.status, dates.status.of, items);
}

/** Rows of one item have come in the right order, but with those of others between them. */
export function putInOrder(items: number, dates: Dates): void {
  const next = new Int32Array(items + 1);
  const { item } = dates.rows;
  for (let row = 0; row < dates.count; row++) {
    const after = (item[row] as number) + 1;
    next[after] = (next[after] as number) + 1;
  }
  for (let at = 1; at <= items; at++) next[at] = (next[at] as number) + (next[at - 1] as number);
  dates.order = withRoom(dates.order, dates.order.of, dates.count);
  const { of } = dates.order;
  for (let row = 0; row < dates.count; row++) {
    const at = item[row] as number;
    of[next[at] as number] = row;
    next[at] = (next[at] as number) + 1;
  }
}

export function putDown(
  item: number,
  duty: DutyPlan,
  weight: number,
  isTightened: boolean,
  days: DutyDays,
  dates: Dates,
): void {
  const { rows } = dates;
  const row = dates.count++;
  rows.item[row] = item;
  rows.duty[row] = duty.number;
  rows.tightened[row] = isTightened ? 1 : 0;
  rows.withdrawal[row] = duty.action.isWithdrawal ? 1 : 0;
  rows.weight[row] = weight;
  rows.dueOn[row] = days.dueOn;
  rows.overdueAfter[row] = days.overdueAfter;
  rows.expiresOn[row] = days.expiresOn;
  rows.replaceBy[row] = days.replaceBy;
  rows.latestPermittedOn[row] = days.latestPermittedOn;
}

/** A hard withdrawal age beats every service: of the rows since `from`, those that fall after it go. */
export function dropAfterWithdrawal(from: number, dates: Dates): void {
  const { withdrawal, dueOn } = dates.rows;
  let at = from;
  while (at < dates.count && (withdrawal[at] === 0 || dueOn[at] === NO_DAY)) at++;
  if (at === dates.count) return;
  const latest = dueOn[at] as number;
  let kept = from;
  for (let row = from; row < dates.count; row++) {
    const on = dueOn[row] as number;
    if (on === NO_DAY || on <= latest) copyRow(row, kept++, dates.rows);
  }
  dates.count = kept;
}

function copyRow(from: number, to: number, rows: DateRows): void {
  if (from === to) return;
  for (const column of Object.values(rows)) column[to] = column[from] as number;
}
