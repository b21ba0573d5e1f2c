/** Short ways to write an organisation's own rule in tests. */
import { day } from '../item/facts.test-support.ts';
import type { OwnRuleDefinition, OwnRuleVersion } from './own-rule.ts';
import { ownRuleAsRule } from './own-rule-as-rule.ts';

/** A look at every portable extinguisher each week, by anybody. */
export const WEEKLY_LOOK: OwnRuleDefinition = {
  kinds: ['portable_extinguisher_dry_powder', 'portable_extinguisher_foam'],
  vessels: { which: 'all' },
  action: { kind: 'inspect', words: 'Look at pin, gauge and bracket' },
  inWords: 'Every extinguisher is looked at once a week.',
  limits: [{ kind: 'interval', from: 'last_done', plus: 'P7D' }],
  resets: [{ act: 'inspected', by: [] }],
  weight: 'own',
};

type Version = { takesEffectOn?: string; number?: number; recordedAt?: string; ruleId?: string };

/** From 1 March 2026, known since that morning. */
export function versionOf(definition: OwnRuleDefinition | null, version: Version = {}): OwnRuleVersion {
  const { takesEffectOn = '2026-03-01', number = 1, recordedAt = '2026-03-01T08:00:00Z', ruleId = 'weekly' } = version;
  const grounds = { decidedBy: 'Anna Berg', reason: 'two were found empty', document: 'Standing orders, no. 4' };
  const on = day(takesEffectOn);
  return {
    ...{ ruleId, number, recordedAt, takesEffectOn: on },
    vessels: definition?.vessels ?? { which: 'all' },
    rule: definition && ownRuleAsRule(ruleId, definition, { ...grounds, takesEffectOn: on }),
  };
}
