/** The item in hand: the rows of the unit that is aboard, its attributes and the events of its vessel. */
import { ATTRIBUTE_IDS } from '../../item/attribute.ts';
import { NO_DAY, NONE } from './codes.ts';
import type { ItemColumns } from './item-columns.ts';
import type { ResetTable } from './resets.ts';

/** As at which day and as known at which instant; the greatest numbers for all that is on record. */
export type NumberedCut = { readonly asOf: number; readonly knownAt: number };

/** One for a whole run, written over for each item: nothing is made anew for an item. */
export type Aboard = {
  readonly columns: ItemColumns;
  readonly cut: NumberedCut;
  kind: number;
  /** Rows of facts in order of day, the first `count` of them. */
  rows: Int32Array;
  count: number;
  /** What the attributes say, by their code: `NONE`, nought and `NO_DAY` where not recorded. */
  readonly value: Int32Array;
  readonly whole: Int32Array;
  readonly dateFirst: Int32Array;
  readonly dateLast: Int32Array;
  /** The events as at the cut, in order of day, the first `eventCount` of them. */
  eventVessel: number;
  event: Uint8Array;
  eventOn: Int32Array;
  eventPlanned: Uint8Array;
  eventCount: number;
  /** The rows whose date counts; `NONE`: none; `NOT_LOOKED_UP`. */
  made: number;
  fitted: number;
  printed: number;
  /** Of the duty in hand: its resets, the place of the last act that counts, and its row. */
  resets: ResetTable;
  lastAt: number;
  last: number;
  /** The organisation's own interval for the duty in hand. */
  ownMonths: number;
  ownDays: number;
  /** The windows of the limit that was counted last. */
  readonly opens: number[];
  readonly closes: number[];
};

export const NOT_LOOKED_UP = -2;

export function nothingAboard(columns: ItemColumns, cut: NumberedCut): Aboard {
  const attributes = (empty: number) => new Int32Array(ATTRIBUTE_IDS.length).fill(empty);
  return {
    columns,
    cut,
    kind: 0,
    rows: new Int32Array(64),
    count: 0,
    value: attributes(NONE),
    whole: attributes(0),
    dateFirst: attributes(NO_DAY),
    dateLast: attributes(NO_DAY),
    eventVessel: NONE,
    event: new Uint8Array(64),
    eventOn: new Int32Array(64),
    eventPlanned: new Uint8Array(64),
    eventCount: 0,
    made: NOT_LOOKED_UP,
    fitted: NOT_LOOKED_UP,
    printed: NOT_LOOKED_UP,
    resets: new Int32Array(0),
    lastAt: NONE,
    last: NONE,
    ownMonths: 0,
    ownDays: 0,
    opens: [],
    closes: [],
  };
}
