/** A rule of one's own that says what a published one says gives the same days, whatever is on record. */
import { anyItem, anyVessel, RUNS } from '@garboard/tests/support/any-history.ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { workOutObligations } from '../item/work-out-obligations.ts';
import { versionOf, WEEKLY_LOOK } from './own-rule.test-support.ts';
import type { OwnLimit, OwnRuleDefinition } from './own-rule.ts';
import type { Duty, Limit, Rule } from './rule.ts';
import { RULES } from './rules.ts';

/** `null`: the published limit has a shape that an organisation's own rule does not have. */
function sameLimit(limit: Limit): OwnLimit | null {
  if (limit.kind === 'after' && limit.plus.kind === 'fixed' && limit.from !== 'first_failed' && !limit.counting)
    return { kind: 'interval', from: limit.from, plus: limit.plus.period };
  if (limit.kind === 'printed' && !limit.renewedBy) return { kind: 'printed_expiry' };
  return limit.kind === 'before_event' ? limit : null;
}

/** As an organisation would write the same. */
function sameRule({ kinds, appliesWhen }: Rule, duty: Duty): OwnRuleDefinition | null {
  const { id: _, action, inWords, limits, fallback = [], resets, window, ...others } = duty;
  const same = limits.flatMap((limit) => sameLimit(limit) ?? []);
  const [first, ...more] = fallback;
  const plain = first?.kind === 'after' && first.plus.kind === 'fixed' && !first.counting ? first : undefined;
  if (appliesWhen || Object.keys(others).length > 0 || same.length < limits.length || more.length > 0) return null;
  if (first && plain?.plus.kind !== 'fixed') return null;
  const from = plain?.from === 'manufactured' ? 'manufactured' : 'installed';
  return {
    ...{ ...WEEKLY_LOOK, kinds, action: action as OwnRuleDefinition['action'], inWords, limits: same, resets },
    ...(plain?.plus.kind === 'fixed' && { first: { from, plus: plain.plus.period } }),
    ...(window && { window }),
  };
}

const PAIRS = RULES.flatMap((rule) =>
  rule.duties.flatMap((duty) => {
    const definition = sameRule(rule, duty);
    return definition ? [{ name: `${rule.id} ${duty.id}`, rule, duty, definition }] : [];
  }),
);

it('there are enough published duties of such a shape to mean something', () => {
  expect(PAIRS.length).toBeGreaterThan(30);
});

it('gives the same days as the published rule of the same shape', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...PAIRS),
      anyItem,
      anyVessel,
      fc.nat(),
      ({ rule, duty, definition }, item, vessel, at) => {
        const kind = rule.kinds[at % rule.kinds.length];
        fc.pre(kind !== undefined);
        const all = workOutObligations({ ...item, kind }, { ...vessel, ownRules: [versionOf(definition)] });
        const published = all.find((each) => each.ruleId === rule.id && each.duty === duty.id);
        const own = all.find(({ scheme }) => scheme === 'own');
        expect(own?.outcome).toEqual(published?.outcome);
      },
    ),
    { ...RUNS, numRuns: 1500 },
  );
});
