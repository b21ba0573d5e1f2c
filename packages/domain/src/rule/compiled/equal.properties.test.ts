/**
 * The compiled rules give, for any history, every date that the explaining engine gives, and no other: obligation
 * by obligation. Each duty of the catalogue has its own histories, made of what it reads.
 */

import { type AnyCase, anyCase, anyCut, caseFor } from '@garboard/tests/support/any-case.ts';
import { anyOwnRules } from '@garboard/tests/support/any-own-rules.ts';
import { daysCounted, daysSaid } from '@garboard/tests/support/days-of-both.ts';
import { reportFigure, size } from '@garboard/tests/support/long.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ITEM_KIND_IDS } from '../../item/item-kind.ts';
import { type Cut, isWithdrawn, workOutObligations } from '../../item/work-out-obligations.ts';
import type { Duty, Rule } from '../rule.ts';
import { RULES } from '../rules.ts';
import { planAsAt } from './compile-plan.ts';
import { emptyDates } from './dates.ts';
import { columnFiller } from './fill-columns.ts';
import { asStored } from './from-history.ts';
import { WITHDRAWN } from './take-aboard.ts';
import { workOutDates } from './work-out-dates.ts';

const MINUTE = 60_000;
const FOR_EACH_DUTY = size(80, 2000);
const OF_ANY = size(2000, 100_000);

const published = planAsAt([], {});
const filler = columnFiller(published);
const dates = emptyDates();

/** How often each duty had a date. */
const dated = new Map<string, number>();
let cases = 0;

function expectEqual(all: readonly AnyCase[], cut: Cut, plan = published, into = filler): void {
  into.startAnew();
  for (const { item, vessel } of all) into.addItem(asStored(item, into.addVessel(vessel)));
  workOutDates(plan, into.columns, cut, dates);
  const said = all.flatMap(({ item, vessel }) => workOutObligations(item, vessel, cut).map(daysSaid));
  expect(daysCounted(plan, dates)).toEqual(said);
  for (const [at, { item }] of all.entries()) expect(dates.status.of[at] === WITHDRAWN).toBe(isWithdrawn(item, cut));
  for (const { of, days } of said) if (days[0] !== null) dated.set(of, (dated.get(of) ?? 0) + 1);
  cases += all.length;
}

describe('the compiled rules and the explaining engine', { timeout: 60 * MINUTE }, () => {
  it.each(RULES.flatMap((rule) => rule.duties.map((duty) => ({ of: `${rule.id} ${duty.id}`, rule, duty }))))(
    'give the same dates for what bears on $of',
    (one) => {
      fc.assert(
        fc.property(caseFor(one), anyCut, (each, cut) => expectEqual([each], cut)),
        { numRuns: FOR_EACH_DUTY, seed: 1912 },
      );
    },
  );

  it('give the same dates for any history of anything, many items and vessels in one run', () => {
    fc.assert(
      fc.property(fc.array(anyCase, { minLength: 1, maxLength: 20 }), anyCut, (all, cut) => expectEqual(all, cut)),
      {
        numRuns: OF_ANY / 10,
        seed: 1914,
      },
    );
  });

  it('give the same dates under rules of the organisation’s own, in versions', () => {
    const underOwn = fc
      .constantFrom(...ITEM_KIND_IDS)
      .chain(anyOwnRules)
      .chain((ownRules) => {
        const [rule = RULES[0] as Rule] = ownRules.flatMap((version) => version.rule ?? []);
        return fc.tuple(caseFor({ rule, duty: rule.duties[0] as Duty }), fc.constant(ownRules));
      });
    fc.assert(
      fc.property(underOwn, anyCut, ([{ item, vessel }, ownRules], cut) => {
        const plan = planAsAt(ownRules, cut);
        expectEqual([{ item, vessel: { ...vessel, id: 'hers', ownRules } }], cut, plan, columnFiller(plan));
      }),
      { numRuns: OF_ANY / 5, seed: 1920 },
    );
    expect(dated.get('own-a duty')).toBeGreaterThan(20);
  });

  it('every duty of the catalogue was really dated, most of them often', () => {
    const seldom = published.duties
      .map(({ rule, duty }) => `${rule.id} ${duty.id}`)
      .filter((of) => (dated.get(of) ?? 0) < 5);
    expect(seldom).toEqual([]);
    const tightened = [...dated.keys()].filter((of) => of.endsWith('.tightened'));
    expect(tightened.length).toBeGreaterThan(20);
    reportFigure('compiled rules held against the explaining engine: duties', published.duties.length);
    reportFigure('compiled rules held against the explaining engine: histories', cases);
  });
});
