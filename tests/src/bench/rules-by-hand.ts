/**
 * The date rules of the items in the bench, written out by hand over somebody else's calendar: what a program
 * would do that knows these few clauses only, has no explanation and takes every fact as it comes.
 */
import type { Capacity } from '@garboard/domain/item/fact.ts';
import type { Contender } from './contender.ts';
import type { BenchKind, StoredFactRow } from './stored-items.ts';

export type Calendar<Date> = {
  /** The first and the last day that `2024-03` or `2024-03-18` can mean. */
  readonly first: (text: string) => Date;
  readonly last: (text: string) => Date;
  readonly plusMonths: (date: Date, months: number) => Date;
  readonly endOfMonth: (date: Date) => Date;
  readonly isBefore: (a: Date, b: Date) => boolean;
  readonly text: (date: Date) => string;
};

export function byHand<Date>(calendar: Calendar<Date>): Contender['work'] {
  return (items, take) => {
    for (const { kind, facts } of items)
      for (const date of RULES[kind](facts, calendar as Calendar<unknown>)) take(date);
  };
}

type Rules = <Date>(facts: readonly StoredFactRow[], calendar: Calendar<Date>) => readonly string[];

const RULES: Record<BenchKind, Rules> = {
  gas_hose: (facts, calendar) => {
    const limits = [
      calendar.last(dateOf(facts, 'printed_expiry')),
      calendar.plusMonths(calendar.first(dateOf(facts, 'installed')), 60),
      calendar.endOfMonth(calendar.plusMonths(calendar.first(dateOf(facts, 'manufactured')), 60)),
    ];
    return [calendar.text(limits.reduce((a, b) => (calendar.isBefore(b, a) ? b : a)))];
  },
  hand_flare: (facts, calendar) => [calendar.text(calendar.last(dateOf(facts, 'printed_expiry')))],
  standing_rigging_wire: (facts, calendar) => [
    later(dateOf(facts, 'installed'), 120, calendar),
    later(dateOf(facts, 'inspected'), 12, calendar),
    later(dateOf(facts, 'inspected', 'rigger'), 24, calendar),
  ],
  liferaft: (facts, calendar) => [
    later(dateOf(facts, 'serviced'), 12, calendar),
    later(dateOf(facts, 'manufactured'), 60, calendar),
    later(dateOf(facts, 'manufactured'), 120, calendar),
  ],
  portable_extinguisher_dry_powder: (facts, calendar) => [
    later(dateOf(facts, 'serviced'), 12, calendar),
    later(dateOf(facts, 'manufactured'), 120, calendar),
  ],
};

function later<Date>(text: string, months: number, calendar: Calendar<Date>): string {
  return calendar.text(calendar.plusMonths(calendar.first(text), months));
}

/** The latest on record; ISO texts sort as their days do. */
function dateOf(facts: readonly StoredFactRow[], fact: StoredFactRow['fact'], by?: Capacity): string {
  let latest = '';
  for (const each of facts) {
    const isMeant = each.fact === fact && (by === undefined || each.done_by?.capacity === by);
    if (isMeant && each.on_text > latest) latest = each.on_text;
  }
  return latest;
}
