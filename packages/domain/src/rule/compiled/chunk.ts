/** Some items of one kind at a time, and what many duties ask of each: the rows whose dates count. */
import type { Aboard } from './aboard.ts';
import { factCode, NONE, PASSED } from './codes.ts';
import { fittedRow, madeRow, printedRow } from './dates-aboard.ts';
import type { ItemColumns } from './item-columns.ts';
import { type ResetTable, rowThatCounts } from './resets.ts';
import { takeAboard } from './take-aboard.ts';

/** Few enough that all of it stays close to the processor. */
const SIZE = 512;

export type Chunk = {
  count: number;
  readonly items: Int32Array;
  /** Rows of facts; `NONE`. */
  readonly made: Int32Array;
  readonly fitted: Int32Array;
  readonly printed: Int32Array;
  /** Of the duty in hand: the last act that counts, and the due day. */
  readonly last: Int32Array;
  readonly due: Int32Array;
  /** Other days, for as long as somebody counts them. */
  readonly other: Int32Array;
};

export function emptyChunk(): Chunk {
  const whole = () => new Int32Array(SIZE);
  const rows = { made: whole(), fitted: whole(), printed: whole(), last: whole() };
  return { count: 0, items: whole(), ...rows, due: whole(), other: whole() };
}

/** Calls `each` for the items in turn, so many at a time. */
export function inChunks(items: Int32Array, chunk: Chunk, aboard: Aboard, each: () => void): void {
  for (let from = 0; from < items.length; from += SIZE) {
    const part = items.subarray(from, from + SIZE);
    chunk.items.set(part);
    chunk.count = part.length;
    for (let at = 0; at < chunk.count; at++) lookUp(at, chunk, aboard);
    each();
  }
}

const MADE = factCode('manufactured');
const FITTED = factCode('installed');
const PRINTED = factCode('printed_expiry');

/** A date that stands alone counts. Where there are two of a kind, they are weighed against each other. */
function lookUp(at: number, chunk: Chunk, aboard: Aboard): void {
  const { item, facts } = aboard.columns;
  const number = chunk.items[at] as number;
  const to = item.factsFrom[number + 1] as number;
  let made = NONE;
  let fitted = NONE;
  let printed = NONE;
  let isTold = true;
  for (let row = item.factsFrom[number] as number; row < to; row++) {
    if (facts.outcome[row] !== PASSED) continue;
    const fact = facts.fact[row];
    if (fact === MADE) {
      isTold &&= made === NONE;
      made = row;
    } else if (fact === FITTED) {
      isTold &&= fitted === NONE;
      fitted = row;
    } else if (fact === PRINTED) {
      isTold &&= printed === NONE;
      printed = row;
    }
  }
  if (!isTold) takeAboard(number, aboard);
  chunk.made[at] = isTold ? made : madeRow(aboard);
  chunk.fitted[at] = isTold ? fitted : fittedRow(aboard);
  chunk.printed[at] = isTold ? printed : printedRow(aboard);
}

/** Of each item in the chunk, the last act that counts. */
export function lookUpLast(resets: ResetTable, chunk: Chunk, { item, facts }: ItemColumns): void {
  for (let at = 0; at < chunk.count; at++) {
    const number = chunk.items[at] as number;
    const from = item.factsFrom[number] as number;
    chunk.last[at] = rowThatCounts(resets, from, item.factsFrom[number + 1] as number, facts);
  }
}
