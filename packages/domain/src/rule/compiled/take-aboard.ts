/** Puts an item in hand: which of its facts are of the unit aboard, as at the cut. The same as `unitAboard` for days. */
import type { Aboard } from './aboard.ts';
import { NOT_LOOKED_UP } from './aboard.ts';
import { factCode, NO_DAY, NONE, PASSED } from './codes.ts';

export const ABOARD = 0;
const NOT_YET_ABOARD = 1;
export const WITHDRAWN = 2;

const REPLACED = factCode('replaced');
const INSTALLED = factCode('installed');
const WITHDRAWAL = factCode('withdrawn');
const MANUFACTURED = factCode('manufactured');
const PRINTED = factCode('printed_expiry');

/** `ABOARD`, `NOT_YET_ABOARD` or `WITHDRAWN`. */
export function takeAboard(item: number, aboard: Aboard): number {
  const { columns, cut } = aboard;
  const from = columns.item.factsFrom[item] as number;
  const to = columns.item.factsFrom[item + 1] as number;
  aboard.kind = columns.item.kind[item] as number;
  aboard.made = NOT_LOOKED_UP;
  aboard.fitted = NOT_LOOKED_UP;
  aboard.printed = NOT_LOOKED_UP;
  if (to - from > aboard.rows.length) aboard.rows = new Int32Array(2 * (to - from));
  if (isWholeHistory(item, aboard)) return takeAll(from, to, aboard);
  const unit = unitsBegunBy(cut.asOf, from, to, aboard);
  return keepOfUnit(unit, from, to, aboard);
}

/** For a question that is the same for every item of a kind about which nothing but its facts is known. */
export function takeKind(kind: number, aboard: Aboard): void {
  aboard.kind = kind;
  aboard.count = 0;
  aboard.made = NONE;
}

/** Nothing to sort out: one unit, nothing struck out, all of it known and happened by the cut. */
export function isWholeHistory(item: number, { columns, cut }: Aboard): boolean {
  const { plain, latest, learnt } = columns.item;
  return plain[item] === 1 && (latest[item] as number) <= cut.asOf && (learnt[item] as number) <= cut.knownAt;
}

function takeAll(from: number, to: number, aboard: Aboard): number {
  for (let row = from; row < to; row++) aboard.rows[row - from] = row;
  aboard.count = to - from;
  return ABOARD;
}

function keepOfUnit(unit: number, from: number, to: number, aboard: Aboard): number {
  const { fact, outcome, day, first, readOn } = aboard.columns.facts;
  const { asOf } = aboard.cut;
  let count = 0;
  let withdrawn = false;
  let fitted = false;
  let madeAfter = false;
  let madeBefore = false;
  let seen = false;
  for (let row = from; row < to; row++) {
    if (!isHeld(row, from, to, aboard) || unitOf(row, from, to, aboard) !== unit) continue;
    const on = day[row] as number;
    const what = fact[row] as number;
    const plate = what === MANUFACTURED || what === PRINTED;
    const passed = outcome[row] === PASSED;
    if (passed && what === MANUFACTURED) {
      if ((first[row] as number) > asOf) madeAfter = true;
      else madeBefore = true;
    }
    if (on <= asOf) seen ||= !plate || readOn[row] !== NO_DAY;
    else {
      fitted ||= passed && what === INSTALLED;
      if (!plate) continue;
    }
    withdrawn ||= passed && what === WITHDRAWAL;
    aboard.rows[count++] = row;
  }
  aboard.count = count;
  const begunAfter = fitted || (madeAfter && !madeBefore);
  return withdrawn ? WITHDRAWN : begunAfter && !seen ? NOT_YET_ABOARD : ABOARD;
}

function isKnown(row: number, { columns, cut }: Aboard): boolean {
  return (columns.facts.recordedAt[row] as number) <= cut.knownAt;
}

/** Known, and not struck out by what is known. */
function isHeld(row: number, from: number, to: number, aboard: Aboard): boolean {
  if (!isKnown(row, aboard)) return false;
  const { corrects, retracts } = aboard.columns.facts;
  if (retracts[row] === 1) return false;
  for (let other = from; other < to; other++) if (corrects[other] === row && isKnown(other, aboard)) return false;
  return true;
}

function isStart(row: number, from: number, to: number, aboard: Aboard): boolean {
  const { fact, outcome } = aboard.columns.facts;
  return fact[row] === REPLACED && outcome[row] === PASSED && isHeld(row, from, to, aboard);
}

/** How many replacements lie no later than the day. */
function unitsBegunBy(asOf: number, from: number, to: number, aboard: Aboard): number {
  const { day } = aboard.columns.facts;
  let units = 0;
  for (let row = from; row < to; row++) if ((day[row] as number) <= asOf && isStart(row, from, to, aboard)) units++;
  return units;
}

function unitOf(row: number, from: number, to: number, aboard: Aboard): number {
  let unit = 0;
  for (let start = from; start < to; start++) {
    if (isStart(start, from, to, aboard) && comesAfter(row, start, from, to, aboard)) unit++;
  }
  return unit;
}

function comesAfter(row: number, start: number, from: number, to: number, aboard: Aboard): boolean {
  const { fact, day } = aboard.columns.facts;
  const days = (day[row] as number) - (day[start] as number);
  if (days !== 0) return days > 0;
  return fact[row] !== WITHDRAWAL && firstSaid(row, to - from, aboard) >= firstSaid(start, to - from, aboard);
}

/** Along the chain of what it corrects, as far as that is known; no chain is longer than there are facts. */
function firstSaid(row: number, longest: number, aboard: Aboard): number {
  const { recordedAt, corrects } = aboard.columns.facts;
  let first = recordedAt[row] as number;
  let at = corrects[row] as number;
  for (let step = 0; step < longest && at !== NONE && isKnown(at, aboard); step++) {
    first = Math.min(first, recordedAt[at] as number);
    at = corrects[at] as number;
  }
  return first;
}
