import { addDays, type Day, formatDay, parseDay } from '@garboard/domain/calendar/day.ts';
import type { Standing } from '@garboard/domain/due-list/standing.ts';
import { crossCheck } from '@garboard/domain/vessel/identifier/cross-check.ts';
import { decodeIdentifiers } from '@garboard/domain/vessel/identifier/identifiers.ts';
import { size } from '@garboard/tests/support/long.ts';
import { describe, expect, test } from 'vitest';
import { CHARTER } from './fleets/charter.ts';
import { type FleetBook, planFleet } from './fleets/plan-fleet.ts';
import { SCHOOL } from './fleets/school.ts';
import { YARD } from './fleets/yard.ts';
import type { FleetPlan } from './plan.ts';
import { judgeFleet, standings } from './testing/judge-plan.ts';

const BOOKS: readonly FleetBook[] = [SCHOOL, YARD, CHARTER];
const day = (text: string) => parseDay(text) as Day;
const plans = (today: Day): FleetPlan[] => BOOKS.map((book) => planFleet(book, today));

/** Month ends, leap days, the turn of the year, and days all over a leap year and the one after. */
const AWKWARD = ['2026-12-31', '2027-01-01', '2027-03-01', '2028-02-29', '2028-03-31'].map(day);
const DAYS = [
  ...AWKWARD,
  ...Array.from({ length: size(3, 240) }, (_, n) => addDays(day('2028-01-02'), size(211, 3) * n)),
];

test('a school has 24 small boats and 3 yachts, a yard 40 boats, a charter operator 12 yachts', () => {
  const [school, yard, charter] = plans(day('2026-11-25'));
  expect(school?.vessels.filter(({ particulars: { lengthOverallM } }) => (lengthOverallM ?? 0) < 8)).toHaveLength(24);
  expect(school?.vessels).toHaveLength(27);
  expect(yard?.vessels).toHaveLength(40);
  expect(charter?.vessels).toHaveLength(12);
});

test('no two boats of a fleet share a name, and no two things aboard a label', () => {
  for (const { vessels } of plans(day('2026-11-25'))) {
    expect(new Set(vessels.map(({ particulars }) => particulars.name)).size).toBe(vessels.length);
    for (const { items } of vessels) expect(new Set(items.map(({ label }) => label)).size).toBe(items.length);
  }
});

test('most of the yard’s boats are ashore and laid up, some dismantled or under repair, a few afloat', () => {
  const [, yard] = plans(day('2026-11-25'));
  const now =
    yard?.vessels.map(({ situations }) => situations.toSorted((a, b) => (a.from < b.from ? -1 : 1)).at(-1)) ?? [];
  const count = (is: (each: (typeof now)[number]) => boolean | undefined) => now.filter(is).length;
  expect(count((each) => each?.place === 'ashore' && each.use !== 'in_commission')).toBe(36);
  expect(count((each) => each?.dismantled)).toBe(7);
  expect(count((each) => each?.underRepair)).toBe(5);
  expect(count((each) => each?.use === 'out_of_service')).toBe(2);
  expect(count((each) => each?.place === 'afloat')).toBe(4);
});

test('the same day gives the same plan, another day the same fleet with other dates', () => {
  const [today, again, later] = [day('2026-11-25'), day('2026-11-25'), day('2027-03-09')].map(plans);
  expect(again).toEqual(today);
  expect(later).not.toEqual(today);
  const things = (fleets: FleetPlan[] = []) =>
    fleets.flatMap(({ vessels }) =>
      vessels.map(({ particulars, items }) => [particulars.name, ...items.map(({ label }) => label)]),
    );
  expect(things(later)).toEqual(things(today));
});

describe.each(DAYS.map(formatDay))('laid out on %s', (text) => {
  const today = day(text);
  const fleets = plans(today);
  const judged = fleets.map(judgeFleet);

  test('every fact would be accepted', () => {
    expect(judged.flat().flatMap(({ problems }) => problems)).toEqual([]);
  });

  test('nothing lies ahead but prints and plans, and all was learned before today', () => {
    for (const { enteredOn, situations, events, items } of fleets.flatMap(({ vessels }) => vessels)) {
      const facts = items.flatMap((item) => item.facts);
      const learned = [enteredOn, ...[...facts, ...situations, ...events].map(({ learnedOn }) => learnedOn)];
      expect(Math.max(...learned)).toBeLessThan(today);
      const done = [
        ...facts.filter(({ fact }) => fact !== 'printed_expiry'),
        ...events.filter(({ planned }) => !planned),
      ];
      const days = [...done.map(({ on }) => on), ...situations.map(({ from }) => from)];
      expect(days.filter((each) => each >= text)).toEqual([]);
      expect(events.filter(({ planned, on }) => planned && on <= text)).toEqual([]);
    }
  });

  test('in every fleet a tenth to a fifth is late, something is due or has no date, and most is in date', () => {
    for (const fleet of judged) {
      const all = fleet.flatMap((each) => standings(each, today));
      const share = (standing: Standing) => all.filter((each) => each === standing).length / all.length;
      expect(share('overdue')).toBeGreaterThan(0.1);
      expect(share('overdue')).toBeLessThan(0.2);
      expect(share('due')).toBeGreaterThan(0.02);
      expect(share('unknown')).toBeGreaterThan(0.02);
      expect(share('in_date')).toBeGreaterThan(0.65);
    }
  });

  test('what is late is spread over the fleet: no boat has more than about a third of it', () => {
    for (const fleet of judged) {
      const late = new Map<string, number>();
      for (const each of fleet) {
        const { name } = each.vessel.particulars;
        const count = standings(each, today).filter((standing) => standing === 'overdue').length;
        if (count > 0) late.set(name, count + (late.get(name) ?? 0));
      }
      const counts = [...late.values()];
      expect(Math.max(...counts)).toBeLessThan(0.35 * counts.reduce((sum, count) => sum + count, 0));
      expect(counts.length).toBeGreaterThan(7);
    }
  });
});

test.each(DAYS.map((today) => [formatDay(today), today] as const))(
  'on %s three yachts have identifiers that can be ones, and of one the hull and the register disagree on the year',
  (_, today) => {
    const told = plans(today)
      .flatMap(({ vessels }) => vessels)
      .filter(({ particulars: { identifiers } }) => Object.keys(identifiers).length > 0)
      .map(({ particulars: { name, identifiers, builtYear } }) => ({
        name,
        doubts: crossCheck(decodeIdentifiers(identifiers), { builtYear: builtYear ?? undefined }),
      }));

    expect(told).toEqual([
      { name: 'Samphire', doubts: [] },
      { name: 'Tansy', doubts: [expect.stringMatching(/^The HIN GB-QZX00042C\d{3} says \d{4} and model year/)] },
      { name: 'Angelica', doubts: [] },
    ]);
  },
);
