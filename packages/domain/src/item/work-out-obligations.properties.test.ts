/** What must hold for any history of any kind of thing under all schemes at once. */

import {
  anyDay,
  anyFact,
  anyInstant,
  anyItem,
  anyVessel,
  LAST,
  NOW,
  RUNS,
} from '@garboard/tests/support/any-history.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type Day, formatDay } from '../calendar/day.ts';
import { findRule } from '../rule/rules.ts';
import type { Fact } from './fact.ts';
import { recorded } from './facts.test-support.ts';
import type { Obligation } from './obligation.ts';
import { ifDoneOn } from './remedy.ts';
import { type Cut, type ItemHistory, type VesselHistory, workOutObligations } from './work-out-obligations.ts';

/** The dates alone, without what is only shown. */
function dates(item: ItemHistory, vessel: VesselHistory, cut?: Cut) {
  return workOutObligations(item, vessel, cut).map(({ ruleId, duty, outcome }) => ({ ruleId, duty, outcome }));
}

describe('for any history', { timeout: 60_000 }, () => {
  it('the order in which facts, situations and events come never matters', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, fc.infiniteStream(fc.nat()), (item, vessel, random) => {
        const shuffled = <Thing>(things: readonly Thing[]) =>
          things
            .map((thing) => ({ thing, at: random.next().value }))
            .sort((a, b) => a.at - b.at)
            .map(({ thing }) => thing);
        const other = workOutObligations(
          { ...item, facts: shuffled(item.facts) },
          { ...vessel, situations: shuffled(vessel.situations), events: shuffled(vessel.events) },
        );
        expect(other).toEqual(workOutObligations(item, vessel));
      }),
      RUNS,
    );
  });

  it('asking as at now, as known now, is asking for all that is on record', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, (item, vessel) => {
        expect(workOutObligations(item, vessel, NOW)).toEqual(workOutObligations(item, vessel));
      }),
      RUNS,
    );
  });

  it('as known at an instant is as if nothing had been recorded later', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, anyInstant, (item, vessel, knownAt) => {
        const known = <Thing extends { recordedAt: string }>(things: readonly Thing[]) =>
          things.filter((thing) => thing.recordedAt <= knownAt);
        const then = workOutObligations(
          { ...item, facts: known(item.facts) },
          { ...vessel, situations: known(vessel.situations), events: known(vessel.events) },
        );
        expect(workOutObligations(item, vessel, { knownAt })).toEqual(then);
      }),
      RUNS,
    );
  });

  it('an act after the day changes nothing as at that day', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, anyFact, anyDay, (item, vessel, added, asOf) => {
        fc.pre(
          !['manufactured', 'printed_expiry', 'replaced', 'installed'].includes(added.fact) && added.on.first > asOf,
        );
        const later: Fact = { ...added, id: 'later' };
        expect(dates({ ...item, facts: [...item.facts, later] }, vessel, { asOf })).toEqual(
          dates(item, vessel, { asOf }),
        );
      }),
      RUNS,
    );
  });

  it('a fact that did not pass changes no date but of what is owed only for a failure', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, anyFact, fc.constantFrom('failed', 'partly'), (item, vessel, added, outcome) => {
        const bad: Fact = { ...added, id: 'bad', outcome };
        const without = dates(item, vessel).filter(isOwedWithoutFailure);
        expect(dates({ ...item, facts: [...item.facts, bad] }, vessel).filter(isOwedWithoutFailure)).toEqual(without);
      }),
      RUNS,
    );
  });

  it('a fact that was struck out is as if it had never been, apart from what is shown', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, anyFact, anyFact, (item, vessel, wrong, right) => {
        const instead: Fact = { ...right, id: 'right' };
        const strickenOut = [
          ...item.facts,
          { ...wrong, id: 'wrong' },
          { ...instead, corrects: 'wrong', recordedAt: wrong.recordedAt },
        ];
        const never = [...item.facts, { ...instead, recordedAt: wrong.recordedAt }];
        expect(dates({ ...item, facts: strickenOut }, vessel)).toEqual(dates({ ...item, facts: never }, vessel));
      }),
      RUNS,
    );
  });

  it('of the limits that compete the earliest binds, and every date follows from it', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, (item, vessel) => {
        for (const { outcome, explanation } of workOutObligations(item, vessel)) expectSound(outcome, explanation);
      }),
      RUNS,
    );
  });

  it('every fact named in an explanation is on record', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, (item, vessel) => {
        const ids = new Set(item.facts.map(({ id }) => id));
        for (const { explanation } of workOutObligations(item, vessel)) {
          const named = [...(explanation.binds?.factIds ?? []), ...explanation.setAside.map(({ factId }) => factId)];
          expect(named.filter((id) => !ids.has(id))).toEqual([]);
        }
      }),
      RUNS,
    );
  });

  it('doing what would change it, when it is due, moves the date to where it says', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, (item, vessel) => {
        for (const obligation of workOutObligations(item, vessel)) expectRemediesToHold(obligation, item, vessel);
      }),
      { ...RUNS, numRuns: 150 },
    );
  });
});

/** Not a duty that a failure brings about: to put right what a surveyor found. */
function isOwedWithoutFailure({ ruleId, duty }: Pick<Obligation, 'ruleId' | 'duty'>): boolean {
  const limits = findRule(ruleId)?.duties.find(({ id }) => id === duty)?.limits ?? [];
  return !limits.some(
    (limit) => limit.kind === 'deadline_set' || (limit.kind === 'after' && limit.from === 'first_failed'),
  );
}

function expectSound(
  outcome: Obligation['outcome'],
  { binds, alsoCounted, missing, sentence }: Obligation['explanation'],
) {
  expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
  if (outcome.kind === 'undated') {
    expect(binds).toBeNull();
    expect(missing.length).toBeGreaterThan(0);
    return;
  }
  const on = binds?.on ?? Number.NaN;
  expect(outcome.expiresOn ?? outcome.dueOn).toBe(on);
  expect(outcome.overdueAfter).toBeGreaterThanOrEqual(outcome.dueOn);
  const competing = alsoCounted.filter((other) => other.on !== null && !/would need|not asked for/.test(other.limit));
  expect(competing.filter((other) => Number(other.on) < on)).toEqual([]);
}

/** A remedy that names a period is tried out by recording it on a day after everything on record. */
function expectRemediesToHold(obligation: Obligation, item: ItemHistory, vessel: VesselHistory) {
  const on = addDays(LAST, 1);
  for (const remedy of obligation.explanation.wouldChangeIt) {
    if (remedy.plus === null) continue;
    const [capacity] = remedy.by;
    const done: Fact = {
      id: 'done',
      fact: remedy.act,
      on: recorded(formatDay(on)),
      outcome: 'passed',
      evidence: 'certificate',
      recordedAt: '2026-06-16T12:00:00Z',
      ...(remedy.test && { test: remedy.test }),
      ...(capacity && { doneBy: { capacity } }),
    };
    const after = workOutObligations({ ...item, facts: [...item.facts, done] }, vessel);
    const same = after.find(({ ruleId, duty }) => ruleId === obligation.ruleId && duty === obligation.duty);
    const expected = remedyLeadsTo(remedy.plus, on);
    if (same)
      expect({ ...nameOf(obligation), dueOn: same.outcome.kind === 'dated' && same.outcome.dueOn }).toEqual({
        ...nameOf(obligation),
        dueOn: expected,
      });
  }
}

const nameOf = ({ ruleId, duty }: Obligation) => ({ ruleId, duty });

function remedyLeadsTo(plus: string, on: Day): Day {
  const remedy = { act: 'serviced', by: [], plus } as const;
  return ifDoneOn(remedy, on) as Day;
}
