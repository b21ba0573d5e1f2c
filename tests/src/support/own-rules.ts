/** Short ways to a rule of one's own, through the actions and nothing else. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { addOwnRule, changeOwnRule, type RuleVersionInput } from '@garboard/actions/rule/lay-down-rule.ts';
import type { OwnRuleRecord } from '@garboard/db/rule/own-rule-record.ts';
import type { OwnRuleDefinition } from '@garboard/domain/rule/own-rule.ts';
import { accepted } from './organisation.ts';

const SAID = { decidedBy: 'Anna Berg', reason: 'one burst in the galley', document: 'Standing orders, no. 4' };

/** A look at every gas hose, each month, from 1 March 2026 on. */
const MONTHLY_LOOK: OwnRuleDefinition = {
  kinds: ['gas_hose'],
  vessels: { which: 'all' },
  action: { kind: 'inspect', words: 'Look along the hose with a torch' },
  inWords: 'Every gas hose is looked at once a month.',
  limits: [{ kind: 'interval', from: 'last_done', plus: 'P1M' }],
  first: { from: 'installed', plus: 'P1M' },
  resets: [{ act: 'inspected', by: [] }],
  weight: 'own',
};

export async function anOwnRule(
  ctx: ActionContext,
  definition: Partial<OwnRuleDefinition> = {},
  takesEffectOn = '2026-03-01',
): Promise<OwnRuleRecord> {
  const whole = { ...MONTHLY_LOOK, ...definition };
  return accepted(await addOwnRule(ctx, { ...SAID, takesEffectOn, definition: whole }));
}

/** Another version of it; `null` ends it. */
export async function aVersion(
  ctx: ActionContext,
  { id, version }: OwnRuleRecord,
  definition: Partial<OwnRuleDefinition> | null,
  takesEffectOn: RuleVersionInput['takesEffectOn'],
): Promise<OwnRuleRecord> {
  const whole = definition && { ...MONTHLY_LOOK, ...definition };
  return accepted(
    await changeOwnRule(ctx, { ...SAID, ruleId: id, expectedVersion: version, takesEffectOn, definition: whole }),
  );
}
