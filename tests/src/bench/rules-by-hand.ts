/**
 * The date rules of the items in the bench, written out by hand over somebody else's calendar: what a program
 * would do that knows these few clauses only, has no explanation and takes every fact as it comes.
 */
import type { Capacity } from '@garboard/domain/item/fact.ts';
import type { Contender } from './contender.ts';
import type { BenchKind, StoredFactRow, StoredItem } from './stored-items.ts';

export type Calendar<Date> = {
  /** The first and the last day that `2024-03` or `2024-03-18` can mean. */
  readonly first: (text: string) => Date;
  readonly last: (text: string) => Date;
  readonly plusMonths: (date: Date, months: number) => Date;
  readonly endOfMonth: (date: Date) => Date;
  readonly isBefore: (a: Date, b: Date) => boolean;
  readonly text: (date: Date) => string;
};

/** From text to text. */
export function byHand<Date>(calendar: Calendar<Date>): Contender['work'] {
  const read: Read<Date> = {
    first: ({ on_text }) => calendar.first(on_text),
    last: ({ on_text }) => calendar.last(on_text),
  };
  return (items, take) => {
    for (const { kind, facts } of items)
      for (const date of RULES[kind](facts, calendar as Calendar<unknown>, read as Read<unknown>))
        take(calendar.text(date as Date));
  };
}

/** From the library's own dates to its own dates: what is text is read before, and written afterwards, off the clock. */
export function byHandAlone<Date>(calendar: Calendar<Date>): Omit<Contender, 'name' | 'goal'> {
  let ready: readonly ReadyItem<Date>[] = [];
  const dates: Date[] = [];
  const read: Read<Date> = {
    first: (row) => (row as ReadyRow<Date>).first,
    last: (row) => (row as ReadyRow<Date>).last,
  };
  return {
    before: (items) => {
      ready = items.map((item) => readyItem(item, calendar));
    },
    work: () => {
      let count = 0;
      for (const { kind, facts } of ready)
        for (const date of RULES[kind](facts, calendar as Calendar<unknown>, read as Read<unknown>))
          dates[count++] = date as Date;
      dates.length = count;
    },
    after: (take) => {
      for (const date of dates) take(calendar.text(date));
      ready = [];
      dates.length = 0;
    },
  };
}

type ReadyRow<Date> = StoredFactRow & { readonly first: Date; readonly last: Date };
type ReadyItem<Date> = { readonly kind: BenchKind; readonly facts: readonly ReadyRow<Date>[] };

function readyItem<Date>({ kind, facts }: StoredItem, { first, last }: Calendar<Date>): ReadyItem<Date> {
  return { kind, facts: facts.map((row) => ({ ...row, first: first(row.on_text), last: last(row.on_text) })) };
}

type Read<Date> = {
  readonly first: (row: StoredFactRow) => Date;
  readonly last: (row: StoredFactRow) => Date;
};
type Rules = <Date>(facts: readonly StoredFactRow[], calendar: Calendar<Date>, read: Read<Date>) => readonly Date[];

const RULES: Record<BenchKind, Rules> = {
  gas_hose: (facts, calendar, { first, last }) => {
    const limits = [
      last(latest(facts, 'printed_expiry')),
      calendar.plusMonths(first(latest(facts, 'installed')), 60),
      calendar.endOfMonth(calendar.plusMonths(first(latest(facts, 'manufactured')), 60)),
    ];
    return [limits.reduce((a, b) => (calendar.isBefore(b, a) ? b : a))];
  },
  hand_flare: (facts, _, { last }) => [last(latest(facts, 'printed_expiry'))],
  standing_rigging_wire: (facts, { plusMonths }, { first }) => [
    plusMonths(first(latest(facts, 'installed')), 120),
    plusMonths(first(latest(facts, 'inspected')), 12),
    plusMonths(first(latest(facts, 'inspected', 'rigger')), 24),
  ],
  liferaft: (facts, { plusMonths }, { first }) => [
    plusMonths(first(latest(facts, 'serviced')), 12),
    plusMonths(first(latest(facts, 'manufactured')), 60),
    plusMonths(first(latest(facts, 'manufactured')), 120),
  ],
  portable_extinguisher_dry_powder: (facts, { plusMonths }, { first }) => [
    plusMonths(first(latest(facts, 'serviced')), 12),
    plusMonths(first(latest(facts, 'manufactured')), 120),
  ],
};

/** The latest on record; ISO texts sort as their days do. Throws where there is none: every item here has one. */
function latest(facts: readonly StoredFactRow[], fact: StoredFactRow['fact'], by?: Capacity): StoredFactRow {
  let found: StoredFactRow | undefined;
  for (const each of facts) {
    const isMeant = each.fact === fact && (by === undefined || each.done_by?.capacity === by);
    if (isMeant && (found === undefined || each.on_text > found.on_text)) found = each;
  }
  if (!found) throw new Error(`no ${fact} among the facts`);
  return found;
}
