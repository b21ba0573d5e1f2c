/**
 * Lays down a version of an organisation's own rule: the first, another, or its end. It is laid down for a fleet, so
 * whoever sees only some of it may not. What it touches is worked out by its change.
 */
import type { OwnRuleRecord, OwnRuleVersionRecord } from '@garboard/db/rule/own-rule-record.ts';
import { insertOwnRule, insertOwnRuleVersion, loadOwnRule, lockOwnRule } from '@garboard/db/rule/own-rules.ts';
import { listUnknownVesselIds } from '@garboard/db/vessel/vessels.ts';
import type { OwnRuleDefinition } from '@garboard/domain/rule/own-rule.ts';
import { ownRuleProblems } from '@garboard/domain/rule/own-rule-problems.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { planFaults } from '../vessel/plan-faults.ts';
import { type Write, write } from '../write.ts';
import { beginWhatIsDue } from './begin-rule-change.ts';

export type RuleVersionInput = Pick<
  OwnRuleVersionRecord,
  'takesEffectOn' | 'definition' | 'decidedBy' | 'reason' | 'document'
>;
export type NewOwnRule = RuleVersionInput & { readonly definition: OwnRuleDefinition };
export type RuleVersionToLayDown = RuleVersionInput & { readonly ruleId: string; readonly expectedVersion: number };

export function addOwnRule(ctx: ActionContext, input: NewOwnRule): Promise<Written<OwnRuleRecord, 'invalid'>> {
  return write(ctx, 'keep_rules', async (write) => {
    if (ctx.vesselIds !== 'all') return refused({ kind: 'forbidden' });
    const errors = await faultsOf(write, input);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const id = newId(ctx.now);
    await insertOwnRule(write.tx, ctx.organisationId, { id, createdAt: ctx.now.toISOString() });
    return done(await layDown(write, { id, version: 0, versions: [] }, input));
  });
}

/** Without a definition it ends the rule from that day on. */
export function changeOwnRule(
  ctx: ActionContext,
  { ruleId, expectedVersion, ...input }: RuleVersionToLayDown,
): Promise<Written<OwnRuleRecord, 'not_found' | 'stale' | 'conflict' | 'invalid'>> {
  return write(ctx, 'keep_rules', async (write) => {
    if (ctx.vesselIds !== 'all') return refused({ kind: 'forbidden' });
    const before = await lockOwnRule(write.tx, ruleId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (input.definition === null && hasEnded(before))
      return refused({ kind: 'conflict', detail: 'It has ended already.' });
    const errors = await faultsOf(write, input);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    return done(await layDown(write, before, input));
  });
}

async function layDown(write: Write, before: OwnRuleRecord, input: RuleVersionInput): Promise<OwnRuleRecord> {
  const { tx, ctx } = write;
  const made = { recordedAt: ctx.now.toISOString(), recordedBy: actorText(ctx.actor) };
  const version = { ...input, ...made, number: before.versions.length + 1 };
  await insertOwnRuleVersion(tx, ctx.organisationId, before.id, version);
  const verb = input.definition === null ? 'end_rule' : before.versions.length === 0 ? 'add_rule' : 'change_rule';
  const last = before.versions.at(-1) ?? null;
  audit(write, { verb, subject: 'rule', subjectId: before.id, before: last, after: version });
  await beginWhatIsDue(write, before.id);
  return (await loadOwnRule(tx, before.id)) ?? before;
}

/** An end that is only planned can be moved. */
function hasEnded({ versions }: OwnRuleRecord): boolean {
  return versions.findLast(({ changeId }) => changeId !== null)?.definition === null;
}

async function faultsOf({ tx, ctx }: Write, { takesEffectOn, definition }: RuleVersionInput): Promise<Fault[]> {
  return [
    ...planFaults('/takesEffectOn', takesEffectOn, ctx.now),
    ...(definition ? ownRuleProblems(definition) : []),
    ...(definition?.vessels.which === 'chosen' ? await vesselFaults({ tx, ctx }, definition.vessels.vesselIds) : []),
  ];
}

async function vesselFaults({ tx }: Write, ids: readonly string[]): Promise<Fault[]> {
  const unknown = await listUnknownVesselIds(tx, ids);
  return ids.flatMap((id, at) =>
    unknown.includes(id) ? [{ pointer: `/vessels/vesselIds/${at}`, detail: 'is no vessel on the register' }] : [],
  );
}
