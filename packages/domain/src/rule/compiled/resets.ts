/** Which act resets a clock, looked up: the whole of a duty's resets is one number for each act. */

import { TESTS } from '../../item/fact.ts';
import type { Reset } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { ACT_CODES, actCode, capacityCode, factCode, NONE, NOT_SAID, PASSED, testCode } from './codes.ts';
import type { FactColumns } from './item-columns.ts';

/** For each act: nought where it is not meant, else a bit for every capacity in which it may be done. */
export type ResetTable = Int32Array;

const ANYBODY = ~0;
/** Where it is not said who did it, it is taken to be somebody who may. */
const WHO_IS_NOT_SAID = 1 << NOT_SAID;

export function resetTable(resets: readonly Reset[]): ResetTable {
  const table = new Int32Array(ACT_CODES);
  for (const { act, tests, by } of resets) {
    const allowed =
      by.length === 0 ? ANYBODY : by.reduce((bits, who) => bits | (1 << capacityCode(who)), WHO_IS_NOT_SAID);
    for (const test of tests ?? [null, ...TESTS]) {
      const code = actCode(factCode(act), testCode(test));
      table[code] = (table[code] as number) | allowed;
    }
  }
  return table;
}

/** Whether the act is meant and was done by somebody who may, whatever came of it. */
function isByWhoMay(table: ResetTable, aboard: Aboard, row: number): boolean {
  const { act, capacity } = aboard.columns.facts;
  return (((table[act[row] as number] as number) >>> (capacity[row] as number)) & 1) === 1;
}

export function doesCount(table: ResetTable, aboard: Aboard, row: number): boolean {
  return aboard.columns.facts.outcome[row] === PASSED && isByWhoMay(table, aboard, row);
}

/** The place among the facts aboard of the last act that counts; `NONE`. */
export function lastThatCounts(table: ResetTable, aboard: Aboard): number {
  for (let at = aboard.count - 1; at >= 0; at--) {
    if (doesCount(table, aboard, aboard.rows[at] as number)) return at;
  }
  return NONE;
}

/** The same among the rows from one up to another; the row itself. */
export function rowThatCounts(table: ResetTable, from: number, to: number, facts: FactColumns): number {
  const { act, capacity, outcome } = facts;
  for (let row = to - 1; row >= from; row--) {
    const allowed = table[act[row] as number] as number;
    if (outcome[row] === PASSED && ((allowed >>> (capacity[row] as number)) & 1) === 1) return row;
  }
  return NONE;
}

/** The place after `at` of the first act that did not pass and was done by somebody who may; `NONE`. */
export function firstFailedAfter(at: number, table: ResetTable, aboard: Aboard): number {
  for (let next = at + 1; next < aboard.count; next++) {
    if (hasFailed(table, aboard, aboard.rows[next] as number)) return next;
  }
  return NONE;
}

function hasFailed(table: ResetTable, aboard: Aboard, row: number): boolean {
  return aboard.columns.facts.outcome[row] !== PASSED && isByWhoMay(table, aboard, row);
}
