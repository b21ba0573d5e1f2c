/** The compiled rules on stored items: from rows to columns, worked out, and written out as text; and the columns alone. */
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { NO_DAY } from '@garboard/domain/rule/compiled/codes.ts';
import { planAsAt } from '@garboard/domain/rule/compiled/compile-plan.ts';
import { type Dates, emptyDates } from '@garboard/domain/rule/compiled/dates.ts';
import { type ColumnFiller, columnFiller } from '@garboard/domain/rule/compiled/fill-columns.ts';
import { workOutDates } from '@garboard/domain/rule/compiled/work-out-dates.ts';
import type { Contender, Take } from './contender.ts';
import { type StoredFactRow, type StoredItem, VESSEL } from './stored-items.ts';

const plan = planAsAt([], {});

/** So many at a time, in room that is used again. */
const BATCH = 2000;

export const COMPILED: Contender = { name: 'the compiled rules', work: compiled() };

function compiled(): Contender['work'] {
  const filler = columnFiller(plan);
  const dates = emptyDates();
  return (items, take) => {
    for (let from = 0; from < items.length; from += BATCH) {
      fill(items, from, Math.min(from + BATCH, items.length), filler);
      workOutDates(plan, filler.columns, {}, dates);
      handOver(dates, take);
    }
  };
}

/** What the prototype was measured on: numbers in, numbers out. */
export const COLUMNS_ALONE: Contender = columnsAlone();

function columnsAlone(): Contender {
  const filler = columnFiller(plan);
  const dates = emptyDates();
  return {
    name: 'the compiled rules, columns to day numbers',
    before: (items) => fill(items, 0, items.length, filler),
    work: () => workOutDates(plan, filler.columns, {}, dates),
    after: (take) => handOver(dates, take),
  };
}

function fill(items: readonly StoredItem[], from: number, to: number, filler: ColumnFiller): void {
  filler.startAnew();
  const vessel = filler.addVessel(VESSEL);
  for (let at = from; at < to; at++) {
    const { kind, facts } = items[at] as StoredItem;
    filler.addItem({ kind, vessel, attributes: {}, facts: facts.map(toStored) });
  }
}

function toStored({ id, fact, on_text, outcome, test, done_by, recorded_at, corrects }: StoredFactRow) {
  const capacity = done_by?.capacity ?? null;
  const recordedAt = recorded_at.getTime();
  return {
    id,
    fact,
    on: on_text,
    outcome,
    test,
    capacity,
    until: null,
    readOn: null,
    hours: null,
    recordedAt,
    corrects,
  };
}

function handOver({ count, order, rows }: Dates, take: Take): void {
  for (let at = 0; at < count; at++) {
    const on = rows.dueOn[order.of[at] as number] as Day;
    take(on === NO_DAY ? 'unknown' : formatDay(on));
  }
}
