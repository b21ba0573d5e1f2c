/**
 * Items with their histories, laid out in columns of numbers: what the compiled rules run over. Days are whole
 * days since 1970; of each item its facts lie together, in order of day and then of id.
 */
import { FEW } from './grow.ts';

/** One row for each fact. `NO_DAY`, `NONE` and nought stand for what is not said. */
export type FactColumns = {
  readonly fact: Uint8Array;
  /** The act and which test it was: `actCode`. */
  readonly act: Uint16Array;
  readonly outcome: Uint8Array;
  readonly capacity: Uint8Array;
  readonly test: Uint8Array;
  /** The first and the last day that the date can mean. */
  readonly first: Int32Array;
  readonly last: Int32Array;
  /** The day that places it in time. */
  readonly day: Int32Array;
  readonly until: Int32Array;
  readonly readOn: Int32Array;
  /** Running hours that the meter read; `NaN` for none. */
  readonly hours: Float64Array;
  /** Milliseconds since 1970. */
  readonly recordedAt: Float64Array;
  /** The row of the fact that it strikes out. */
  readonly corrects: Int32Array;
  /** 1 for one that strikes out and says nothing itself. */
  readonly retracts: Uint8Array;
};

/** One row for each attribute recorded: read as a value that a rule asks for, as a whole number and as a date. */
export type AttributeColumns = {
  readonly attribute: Uint8Array;
  readonly value: Int32Array;
  readonly whole: Int32Array;
  readonly first: Int32Array;
  readonly last: Int32Array;
};

/** One row for each figure of the organisation's own that bears on an item, the one that goes first first. */
export type OverrideColumns = {
  readonly duty: Int32Array;
  readonly months: Int32Array;
  readonly days: Int32Array;
  readonly weight: Uint8Array;
  readonly from: Int32Array;
  readonly recordedAt: Float64Array;
  readonly endedOn: Int32Array;
  readonly endedAt: Float64Array;
};

/** One row for each event of a vessel, in order of day and then of id. */
export type EventColumns = {
  readonly event: Uint8Array;
  readonly on: Int32Array;
  readonly planned: Uint8Array;
  readonly recordedAt: Float64Array;
};

/** One row for each item, and one more: `…From` is the first row of its own, and that of the next the end of them. */
export type ItemRows = {
  readonly kind: Uint16Array;
  readonly vessel: Int32Array;
  readonly factsFrom: Int32Array;
  readonly attributesFrom: Int32Array;
  readonly overridesFrom: Int32Array;
  /** 1 where one unit has been aboard all along and nothing was struck out: every fact is of it. */
  readonly plain: Uint8Array;
  /** The last day that any of its facts names, and the last instant at which one was recorded. */
  readonly latest: Int32Array;
  readonly learnt: Float64Array;
};

/** One row for each vessel, and one more. */
export type VesselRows = { readonly schemes: Int32Array; readonly eventsFrom: Int32Array };

/** A row for each vessel and each of the organisation's own rules: whether it bears on her. */
export type BearingColumns = { readonly bears: Uint8Array };

/** Written over from one batch to the next, so that they grow no further than the largest. */
export type ItemColumns = {
  items: number;
  vessels: number;
  item: ItemRows;
  vessel: VesselRows;
  facts: FactColumns;
  attributes: AttributeColumns;
  overrides: OverrideColumns;
  events: EventColumns;
  ownRules: BearingColumns;
};

export function emptyColumns(): ItemColumns {
  const bytes = () => new Uint8Array(FEW);
  const words = () => new Uint16Array(FEW);
  const whole = () => new Int32Array(FEW);
  const exact = () => new Float64Array(FEW);
  return {
    items: 0,
    vessels: 0,
    item: {
      ...{ kind: words(), vessel: whole(), factsFrom: whole(), attributesFrom: whole(), overridesFrom: whole() },
      ...{ plain: bytes(), latest: whole(), learnt: exact() },
    },
    vessel: { schemes: whole(), eventsFrom: whole() },
    facts: {
      ...{ fact: bytes(), act: words(), outcome: bytes(), capacity: bytes(), test: bytes() },
      ...{ first: whole(), last: whole(), day: whole(), until: whole(), readOn: whole() },
      ...{ hours: exact(), recordedAt: exact(), corrects: whole(), retracts: bytes() },
    },
    attributes: { attribute: bytes(), value: whole(), whole: whole(), first: whole(), last: whole() },
    overrides: {
      ...{ duty: whole(), months: whole(), days: whole(), weight: bytes() },
      ...{ from: whole(), recordedAt: exact(), endedOn: whole(), endedAt: exact() },
    },
    events: { event: bytes(), on: whole(), planned: bytes(), recordedAt: exact() },
    ownRules: { bears: bytes() },
  };
}
