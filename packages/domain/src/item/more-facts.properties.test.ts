/** What more that is known may do to a date, and what it may not. */

import { anyDay, anyFact, anyItem, anyVessel, RUNS } from '@garboard/tests/support/any-history.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import type { Duty, Limit, Reset } from '../rule/rule.ts';
import { RULES } from '../rule/rules.ts';
import { SCHEME_IDS } from '../rule/scheme.ts';
import type { Fact, FactKind } from './fact.ts';
import { recorded } from './facts.test-support.ts';
import type { Obligation } from './obligation.ts';
import { type ItemHistory, type VesselHistory, workOutObligations } from './work-out-obligations.ts';

type Named = { readonly ruleId: string; readonly duty: string };

/** Limits whose length depends on neither age nor condition, counted from the last act. */
function isFloating(limit: Limit): boolean {
  return (
    limit.kind === 'triggered' || (limit.kind === 'after' && limit.from === 'last_done' && limit.plus.kind === 'fixed')
  );
}

const FLOATING = RULES.flatMap((rule) =>
  rule.duties
    .filter(
      ({ limits, cappedBy, noLaterThan, window }) => !cappedBy && !noLaterThan && !window && limits.every(isFloating),
    )
    .map((duty) => ({ rule, duty })),
);

describe('more facts', { timeout: 60_000 }, () => {
  it('there are floating duties to try it on', () => {
    expect(FLOATING.length).toBeGreaterThan(20);
  });

  it('a later passed service never gives an earlier floating date than the one before it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FLOATING), anyItem, anyVessel, anyDay, anyDay, (one, any, vessel, once, later) => {
        const [kind] = one.duty.onlyFor ?? one.rule.kinds;
        const served = serve(one.duty, 'served', formatDay(once));
        const again = serve(one.duty, 'again', formatDay(later));
        if (kind === undefined || served === null || again === null) return;
        const item: ItemHistory = { ...any, kind, facts: [...any.facts, served] };
        fc.pre(isAfterAll(again, item.facts));
        const named = { ruleId: one.rule.id, duty: one.duty.id };
        const before = dueOn(item, vessel, named);
        const after = dueOn({ ...item, facts: [...item.facts, again] }, vessel, named);
        if (before !== null && after !== null) expect(after).toBeGreaterThanOrEqual(before);
      }),
      RUNS,
    );
  });

  it('a date stays a date when more is said of the thing that is no act of the duty', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, anyFact, fc.constantFrom(...NO_ACTS), (item, vessel, added, fact) => {
        const more: Fact = { ...withoutTest(added), id: 'more', fact, outcome: 'passed' };
        const after = workOutObligations({ ...item, facts: [...item.facts, more] }, vessel);
        for (const { ruleId, duty, outcome } of workOutObligations(item, vessel)) {
          const same = after.find((one) => one.ruleId === ruleId && one.duty === duty);
          if (outcome.kind === 'dated' && same)
            expect({ ruleId, duty, kind: same.outcome.kind }).toEqual({ ruleId, duty, kind: 'dated' });
        }
      }),
      RUNS,
    );
  });

  it('a mishap never puts a date off', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, anyDay, fc.constantFrom(...MISHAPS), (item, vessel, on, event) => {
        const mishap = { id: 'mishap', event, on, planned: false, recordedAt: '2026-06-15T12:00:00Z' };
        const after = workOutObligations(item, { ...vessel, events: [...vessel.events, mishap] });
        for (const { ruleId, duty, outcome } of workOutObligations(item, vessel)) {
          const same = after.find((one) => one.ruleId === ruleId && one.duty === duty);
          expect(same).toBeDefined();
          if (outcome.kind === 'dated') expect(dayOf(same)).toBeLessThanOrEqual(outcome.dueOn);
        }
      }),
      RUNS,
    );
  });

  it('laying up moves no date', () => {
    fc.assert(
      fc.property(anyItem, anyVessel, (item, vessel) => {
        const dates = (all: readonly Obligation[]) =>
          all.map(({ ruleId, duty, outcome }) => ({ ruleId, duty, outcome }));
        expect(dates(workOutObligations(item, { ...vessel, situations: [] }))).toEqual(
          dates(workOutObligations(item, vessel)),
        );
      }),
      RUNS,
    );
  });
});

const NO_ACTS = [
  'manufactured',
  'installed',
  'printed_expiry',
  'extended',
  'moved',
  'meter',
] as const satisfies readonly FactKind[];
const MISHAPS = [
  'grounding',
  'lightning',
  'fire',
  'structural_repair',
  'change_of_owner',
  'gale',
  'alteration',
  'gas_system_change',
] as const;

function withoutTest({ test: _, ...fact }: Omit<Fact, 'id'>): Omit<Fact, 'id'> {
  return fact;
}

function dayOf(obligation: Obligation | undefined): number {
  return obligation?.outcome.kind === 'dated' ? obligation.outcome.dueOn : Number.NaN;
}

function dueOn(item: ItemHistory, vessel: VesselHistory, { ruleId, duty }: Named): number | null {
  const all = { ...vessel, schemes: SCHEME_IDS };
  const found = workOutObligations(item, all).find((one) => one.ruleId === ruleId && one.duty === duty);
  return found?.outcome.kind === 'dated' ? found.outcome.dueOn : null;
}

/** A passed act that resets the duty, done by whoever may; no replacement, which would begin another unit. */
function serve(duty: Duty, id: string, on: string): Fact | null {
  const reset = duty.resets.find(({ act }: Reset) => act !== 'replaced');
  if (!reset) return null;
  const [capacity] = reset.by;
  return {
    id,
    fact: reset.act,
    on: recorded(on),
    outcome: 'passed',
    evidence: 'certificate',
    recordedAt: '2026-06-15T12:00:00Z',
    ...(reset.tests?.[0] && { test: reset.tests[0] }),
    ...(capacity && { doneBy: { capacity } }),
  };
}

function isAfterAll({ on }: Fact, facts: readonly Fact[]): boolean {
  return facts.every((fact) => fact.on.last < on.first);
}
