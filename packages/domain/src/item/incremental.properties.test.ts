/** What is worked out fact by fact, as facts come, is what is worked out from all of them at once. */
import { anyItem, anyVessel } from '@garboard/tests/support/any-history.ts';
import { size } from '@garboard/tests/support/long.ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Fact } from './fact.ts';
import type { Obligation } from './obligation.ts';
import { type ItemHistory, type VesselHistory, workOutObligations } from './work-out-obligations.ts';

const MINUTE = 60_000;
const HISTORIES = size(400, 10_000);

/** As a database keeps them: by rule and duty, as text. */
type Stored = Map<string, string>;

const keyOf = ({ ruleId, duty }: Obligation) => `${ruleId} ${duty}`;

/** Only what differs is written, and what is owed no longer goes. */
function refresh(stored: Stored, obligations: readonly Obligation[]): void {
  const owed = new Set(obligations.map(keyOf));
  for (const key of [...stored.keys()].filter((each) => !owed.has(each))) stored.delete(key);
  for (const obligation of obligations) {
    const text = JSON.stringify(obligation);
    if (stored.get(keyOf(obligation)) !== text) stored.set(keyOf(obligation), text);
  }
}

/** Each recorded a minute after the one before; some strike out an earlier one. */
const anyRecord = fc
  .tuple(anyItem, fc.array(fc.nat({ max: 40 }), { minLength: 9, maxLength: 9 }))
  .map(([item, picks]) => ({
    ...item,
    facts: item.facts.map((fact, at): Fact => {
      const struck = item.facts[picks[at] ?? at];
      const corrects = struck && (picks[at] ?? at) < at ? { corrects: struck.id } : {};
      return { ...fact, ...corrects, recordedAt: instant(at) };
    }),
  }));

function instant(at: number): string {
  return new Date(Date.UTC(2026, 5, 16, 0, at)).toISOString();
}

/** Known before the first fact: the facts alone come one by one. */
const anyKnownVessel = anyVessel.map(
  (vessel): VesselHistory => ({
    ...vessel,
    situations: vessel.situations.map((each) => ({ ...each, recordedAt: '2004-01-01T00:00:00Z' })),
    events: vessel.events.map((each) => ({ ...each, recordedAt: '2004-01-01T00:00:00Z' })),
  }),
);

it('recompute equals incremental, and each step is what was known then', { timeout: 20 * MINUTE }, () => {
  let corrected = 0;
  fc.assert(
    fc.property(anyRecord, anyKnownVessel, (item, vessel) => {
      corrected += item.facts.filter(({ corrects }) => corrects !== undefined).length;
      expectSameAtEveryStep(item, vessel);
    }),
    { numRuns: HISTORIES, seed: 1870 },
  );
  expect(corrected).toBeGreaterThan(HISTORIES / 10);
});

function expectSameAtEveryStep(item: ItemHistory, vessel: VesselHistory): void {
  const stored: Stored = new Map();
  for (const at of item.facts.keys()) {
    refresh(stored, workOutObligations({ ...item, facts: item.facts.slice(0, at + 1) }, vessel));
    const known = workOutObligations(item, vessel, { knownAt: instant(at) });
    expect(stored).toEqual(new Map(known.map((each) => [keyOf(each), JSON.stringify(each)])));
  }
  const recomputed: Stored = new Map();
  refresh(recomputed, workOutObligations({ ...item, facts: item.facts.toReversed() }, vessel));
  if (item.facts.length > 0) expect(stored).toEqual(recomputed);
}
