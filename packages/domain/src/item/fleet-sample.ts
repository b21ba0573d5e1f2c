/**
 * Samples: so many of each type and year aboard must be discharged or tested, whichever they are. No single
 * item owes it, so it is no obligation of an item.
 *
 * Sources: Res. A.951(23) 9.1-9.2, one portable extinguisher of each type and year of manufacture is
 * discharged every five years; MSC.1/Circ.1318/Rev.1, one carbon dioxide cylinder in ten is hydrostatically
 * tested at ten years, all before the twentieth anniversary and every ten years after, and more of them
 * where one fails.
 */
import { addMonths, type Day, formatDay } from '../calendar/day.ts';
import type { Fact } from './fact.ts';
import { dayOfFact } from './facts-on-record.ts';
import type { ItemKindId } from './item-kind.ts';

/** One extinguisher or cylinder; `facts` are those of the unit aboard. `made`: its year or day of manufacture. */
export type Sampled = {
  readonly itemId: string;
  readonly kind: ItemKindId;
  readonly made: Day | null;
  readonly facts: readonly Fact[];
};

/** So many of `among` must be done by the day; those longest without come first. */
export type Sample = {
  readonly group: string;
  readonly kind: ItemKindId;
  /** The year of manufacture. */
  readonly madeIn: string;
  readonly howMany: number;
  readonly by: Day;
  readonly among: readonly string[];
};

/** `unknown`: the items whose manufacture is not on record; nothing can be said of them. */
export type Samples = { readonly samples: readonly Sample[]; readonly unknown: readonly string[] };

/** Those that are refilled: a disposable one is not let off for a sample. */
export const DISCHARGED_KINDS = [
  'portable_extinguisher_dry_powder',
  'portable_extinguisher_co2',
  'portable_extinguisher_foam',
  'portable_extinguisher_water',
  'portable_extinguisher_wet_chemical',
] as const satisfies readonly ItemKindId[];

const DISCHARGE_MONTHS = 5 * 12;

/**
 * One of each type and year, five years after the last discharge in that group; with none on record, five
 * years after its first day of manufacture (our reading).
 */
export function dischargeSamples(items: readonly Sampled[]): Samples {
  const groups = Map.groupBy(items.filter(isDated), ({ kind, made }) => `${kind} ${yearOf(made)}`);
  const samples = [...groups].map(([group, members]): Sample => {
    const last = Math.max(...members.map((member) => lastTest(member, 'discharge') ?? Number.NEGATIVE_INFINITY));
    const since = Number.isFinite(last) ? (last as Day) : (Math.min(...members.map(({ made }) => made)) as Day);
    const by = addMonths(since, DISCHARGE_MONTHS);
    return { group, ...ofFirst(members), howMany: 1, by, among: longestWithout(members, 'discharge') };
  });
  return { samples: samples.sort(byDay), unknown: items.filter((item) => !isDated(item)).map(({ itemId }) => itemId) };
}

/**
 * Cylinders of one system: a tenth (rounded up) by ten years of age, all by twenty, and all again every ten
 * years. One that failed makes it half of them at ten years, a second one all.
 */
export function cylinderSamples(cylinders: readonly Sampled[]): Samples {
  const dated = cylinders.filter(isDated);
  const groups = Map.groupBy(dated, ({ made }) => made);
  const samples = [...groups].flatMap(([made, members]) => samplesOfAge(made, members));
  return {
    samples: samples.sort(byDay),
    unknown: cylinders.filter((item) => !isDated(item)).map(({ itemId }) => itemId),
  };
}

function samplesOfAge(made: Day, members: readonly Dated[]): readonly Sample[] {
  const group = `cylinders of ${yearOf(made)}`;
  const due = (years: number, share: number): Sample => {
    const from = addMonths(made, 12 * (years - 10));
    const left = members.filter((member) => (lastTest(member, 'hydrostatic') ?? made) <= from);
    const done = members.length - left.length;
    const howMany = Math.max(0, Math.ceil(members.length * share) - done);
    const by = addMonths(made, 12 * years);
    return { group, ...ofFirst(members), howMany, by, among: longestWithout(left, 'hydrostatic') };
  };
  const first = due(10, shareAtTen(members));
  if (first.howMany > 0) return [first];
  for (let years = 20; ; years += 10) {
    const next = due(years, 1);
    if (next.howMany > 0) return [next];
  }
}

function shareAtTen(members: readonly Dated[]): number {
  const failed = members.filter(({ facts }) =>
    facts.some((fact) => fact.test === 'hydrostatic' && fact.outcome === 'failed'),
  ).length;
  if (failed === 0) return 0.1;
  return failed === 1 ? 0.5 : 1;
}

/** They share their kind and their year. */
function ofFirst([first]: readonly Dated[]): Pick<Sample, 'kind' | 'madeIn'> {
  if (!first) throw new Error('a group without a member');
  return { kind: first.kind, madeIn: yearOf(first.made) };
}

type Dated = Sampled & { readonly made: Day };

function isDated(item: Sampled): item is Dated {
  return item.made !== null;
}

/** The last day on which it was discharged or tested and passed. */
function lastTest({ facts }: Sampled, test: 'discharge' | 'hydrostatic'): Day | null {
  const done = facts.filter((fact) => fact.test === test && fact.outcome === 'passed').map(dayOfFact);
  return done.length > 0 ? (Math.max(...done) as Day) : null;
}

function longestWithout(members: readonly Dated[], test: 'discharge' | 'hydrostatic'): readonly string[] {
  const since = (member: Dated) => lastTest(member, test) ?? member.made;
  return [...members].sort((a, b) => since(a) - since(b) || (a.itemId < b.itemId ? -1 : 1)).map(({ itemId }) => itemId);
}

function byDay(a: Sample, b: Sample): number {
  return a.by - b.by || (a.group < b.group ? -1 : 1);
}

function yearOf(day: Day): string {
  return formatDay(day).slice(0, 4);
}
