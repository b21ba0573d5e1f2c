/** The one date of a kind that counts among the facts aboard: the same as `dateOnRecord` for days. */
import { addMonths, type Day } from '../../calendar/day.ts';
import { NEAR_MONTHS } from '../../item/renewed-print.ts';
import { type Aboard, NOT_LOOKED_UP } from './aboard.ts';
import { factBits, NO_DAY, NONE, PASSED } from './codes.ts';

const MADE = factBits(['manufactured']);
const FITTED = factBits(['installed', 'replaced']);
const PRINTED = factBits(['printed_expiry']);

/** The row of the manufacture that counts; `NONE`. */
export function madeRow(aboard: Aboard): number {
  if (aboard.made === NOT_LOOKED_UP) aboard.made = rowOnRecord(MADE, aboard);
  return aboard.made;
}

export function fittedRow(aboard: Aboard): number {
  if (aboard.fitted === NOT_LOOKED_UP) aboard.fitted = rowOnRecord(FITTED, aboard);
  return aboard.fitted;
}

export function printedRow(aboard: Aboard): number {
  if (aboard.printed === NOT_LOOKED_UP) aboard.printed = rowOnRecord(PRINTED, aboard);
  return aboard.printed;
}

/** Which of the printed dates a certificate or a part takes for its own. */
export type OwnPrint = (row: number, aboard: Aboard, after: number, before: number) => boolean;

/** The printed date that counts among those for which `isOwn`; `after` and `before` are handed on to it. */
export function printAmong(isOwn: OwnPrint, aboard: Aboard, after: number, before: number): number {
  return rowOnRecord(PRINTED, aboard, isOwn, after, before);
}

const ANY: OwnPrint = () => true;

/** The more exact of two that agree, and the earliest of those that do not. */
function rowOnRecord(facts: number, aboard: Aboard, isOwn = ANY, after = NONE, before = NONE): number {
  const { first } = aboard.columns.facts;
  let found = NONE;
  for (let at = 0; at < aboard.count; at++) {
    const row = aboard.rows[at] as number;
    if (!isOne(row, facts, aboard) || !isOwn(row, aboard, after, before)) continue;
    if (isSaidMoreExactly(row, facts, aboard, isOwn, after, before)) continue;
    if (found === NONE || (first[row] as number) < (first[found] as number)) found = row;
  }
  return found;
}

function isOne(row: number, facts: number, { columns }: Aboard): boolean {
  const { fact, outcome } = columns.facts;
  return ((facts >>> (fact[row] as number)) & 1) === 1 && outcome[row] === PASSED;
}

function isSaidMoreExactly(
  row: number,
  facts: number,
  aboard: Aboard,
  isOwn: OwnPrint,
  after: number,
  before: number,
): boolean {
  const { first, last } = aboard.columns.facts;
  const begins = first[row] as number;
  const ends = last[row] as number;
  if (begins === ends) return false;
  for (let at = 0; at < aboard.count; at++) {
    const other = aboard.rows[at] as number;
    const otherFirst = first[other] as number;
    const otherLast = last[other] as number;
    if (otherFirst < begins || otherLast > ends || (otherFirst === begins && otherLast === ends)) continue;
    if (isOne(other, facts, aboard) && isOwn(other, aboard, after, before)) return true;
  }
  return false;
}

/** `isOfWhatWasRenewed`: read before the act, or shown to run out before it or within half a year after it. */
export function isRenewed(print: number, act: number, { columns }: Aboard): boolean {
  const { readOn, last, day } = columns.facts;
  const on = day[act] as number;
  if (readOn[print] !== NO_DAY && (readOn[print] as number) < on) return true;
  return (last[print] as number) <= addMonths(on as Day, NEAR_MONTHS);
}

/** `isOfWhatWasBefore`: the same where the act begins something new. */
export function isBefore(print: number, act: number, { columns }: Aboard): boolean {
  const { readOn, last, day } = columns.facts;
  const on = day[act] as number;
  return (last[print] as number) <= on || (readOn[print] !== NO_DAY && (readOn[print] as number) < on);
}
