/** Rules as an organisation may lay them down, in versions that take effect, change and end. */

import { type Capacity, TESTS } from '@garboard/domain/item/fact.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import {
  OWN_RULE_WEIGHTS,
  type OwnLimit,
  type OwnRuleDefinition,
  type OwnRuleVersion,
} from '@garboard/domain/rule/own-rule.ts';
import { ownRuleAsRule } from '@garboard/domain/rule/own-rule-as-rule.ts';
import { type PeriodText, type Reset, RULE_ACTIONS } from '@garboard/domain/rule/rule.ts';
import { VESSEL_EVENTS } from '@garboard/domain/vessel/situation.ts';
import fc from 'fast-check';
import { anyDay, anyInstant } from './any-history.ts';

const anyPeriod = fc.constantFrom<PeriodText[]>('P7D', 'P1M', 'P6M', 'P1Y', 'P3Y', 'P100D');

const anyLimit: fc.Arbitrary<OwnLimit> = fc.oneof(
  fc.record({
    kind: fc.constant('interval' as const),
    from: fc.constantFrom('manufactured' as const, 'installed' as const, 'last_done' as const),
    plus: anyPeriod,
  }),
  fc.constant({ kind: 'printed_expiry' as const }),
  fc.record({ kind: fc.constant('running_hours' as const), hours: fc.integer({ min: 10, max: 500 }) }),
  fc.record({
    kind: fc.constant('before_event' as const),
    event: fc.constantFrom(...VESSEL_EVENTS),
    within: anyPeriod,
  }),
);

const ACTS = ['inspected', 'serviced', 'tested', 'replaced', 'overhauled'] as const;
const BY = ['crew', 'rigger', 'surveyor', 'maker'] as const satisfies readonly Capacity[];

const anyReset: fc.Arbitrary<Reset> = fc
  .tuple(
    fc.constantFrom(...ACTS),
    fc.subarray([...BY]),
    fc.option(fc.subarray([...TESTS], { minLength: 1, maxLength: 9 })),
  )
  .map(([act, by, tests]) => ({ act, by, ...(tests && { tests }) }));

const anyVessels = fc.constantFrom<OwnRuleDefinition['vessels'][]>(
  { which: 'all' },
  { which: 'under_scheme', scheme: 'solas' },
  { which: 'under_scheme', scheme: 'insurer' },
  { which: 'chosen', vesselIds: ['hers'] },
  { which: 'chosen', vesselIds: ['another’s'] },
);

function anyDefinition(kind: ItemKindId): fc.Arbitrary<OwnRuleDefinition> {
  return fc
    .record({
      vessels: anyVessels,
      action: fc.constantFrom(...RULE_ACTIONS),
      limits: fc.array(anyLimit, { minLength: 1, maxLength: 3 }),
      first: fc.option(
        fc.record({ from: fc.constantFrom('manufactured' as const, 'installed' as const), plus: anyPeriod }),
      ),
      window: fc.option(fc.record({ before: anyPeriod, after: anyPeriod })),
      resets: fc.array(anyReset, { minLength: 1, maxLength: 2 }),
      weight: fc.constantFrom(...OWN_RULE_WEIGHTS),
    })
    .map(({ action, first, window, ...rest }) => ({
      ...{ ...rest, kinds: [kind], action: { kind: action, words: 'Do it' }, inWords: 'It is done.' },
      ...(first && { first }),
      ...(window && { window }),
    }));
}

/** Up to three rules of up to two versions each, for things of that kind; now and then a version ends its rule. */
export function anyOwnRules(kind: ItemKindId): fc.Arbitrary<readonly OwnRuleVersion[]> {
  const version = fc.record({
    ruleId: fc.constantFrom('own-a', 'own-b', 'own-c'),
    takesEffectOn: anyDay,
    recordedAt: anyInstant,
    definition: fc.option(anyDefinition(kind), { freq: 6 }),
  });
  return fc.array(version, { minLength: 1, maxLength: 6 }).map((versions) =>
    versions.map(({ ruleId, takesEffectOn, recordedAt, definition }, at) => ({
      ...{ ruleId, takesEffectOn, recordedAt, number: at + 1 },
      vessels: definition?.vessels ?? { which: 'all' },
      rule: definition && ownRuleAsRule(ruleId, definition, { ...GROUNDS, takesEffectOn }),
    })),
  );
}

const GROUNDS = { decidedBy: 'Anna Berg', reason: 'two were found empty', document: 'Standing orders, no. 4' };
