/** An organisation's own rule as the API shows it: like a published one, with its versions. */
import type { OwnRuleText, OwnRuleVersion } from '@garboard/contract/rule/own-rule.ts';
import type { Rule } from '@garboard/contract/rule/rule.ts';
import type { OwnRuleRecord, OwnRuleVersionRecord } from '@garboard/db/rule/own-rule-record.ts';
import { toOwnRuleVersion } from '@garboard/db/rule/own-rule-record.ts';
import type { RuleChangeRecord } from '@garboard/db/rule/rule-changes.ts';
import type { Scope } from '@garboard/db/scope.ts';
import type { OwnRuleDefinition } from '@garboard/domain/rule/own-rule.ts';
import { withoutNulls } from '../request/without-nulls.ts';
import { presentRule } from './present-rule.ts';

/** Told is the version in force, else the last that says something: what began, before what is planned. */
export function presentOwnRule(record: OwnRuleRecord, seen: Scope['vesselIds']): Rule {
  const inForce = record.versions.findLast(({ changeId }) => changeId !== null);
  const told = toldVersion(record);
  const { rule } = toOwnRuleVersion(record.id, told);
  if (!rule) throw new Error(`own rule ${record.id} says nothing`);
  return {
    ...presentRule(rule),
    own: true,
    ownRule: {
      version: record.version,
      ...(inForce?.definition && { inForce: inForce.number }),
      versions: record.versions.map((each) => presentVersion(each, seen)),
    },
  };
}

function toldVersion({ id, versions }: OwnRuleRecord): OwnRuleVersionRecord {
  const saying = versions.filter(({ definition }) => definition !== null);
  const told = saying.findLast(({ changeId }) => changeId !== null) ?? saying.at(-1);
  if (!told) throw new Error(`own rule ${id} has no version that says something`);
  return told;
}

/** Part by part, so that a repeated answer is the same to the byte. */
function presentVersion(record: OwnRuleVersionRecord, seen: Scope['vesselIds']): OwnRuleVersion {
  return withoutNulls({
    number: record.number,
    takesEffectOn: record.takesEffectOn,
    decidedBy: record.decidedBy,
    reason: record.reason,
    document: record.document,
    laysDown: record.definition && presentText(record.definition, seen),
    recordedAt: record.recordedAt,
    recordedBy: record.recordedBy,
    changeId: record.changeId,
  });
}

function presentText(text: OwnRuleDefinition, seen: Scope['vesselIds']): OwnRuleText {
  return {
    kinds: [...text.kinds],
    vessels: presentVessels(text.vessels, seen),
    action: { kind: text.action.kind, words: text.action.words },
    inWords: text.inWords,
    limits: text.limits.map(presentLimit),
    ...(text.first && { first: { from: text.first.from, plus: text.first.plus } }),
    ...(text.window && { window: { before: text.window.before, after: text.window.after } }),
    resets: text.resets.map(({ act, tests, by }) => ({
      act,
      ...(tests && { tests: [...tests] }),
      by: [...by],
    })) as OwnRuleText['resets'],
    weight: text.weight,
  };
}

/** Of the vessels chosen those that the caller may see. */
function presentVessels(vessels: OwnRuleDefinition['vessels'], seen: Scope['vesselIds']): OwnRuleText['vessels'] {
  switch (vessels.which) {
    case 'all':
      return { which: 'all' };
    case 'under_scheme':
      return { which: 'under_scheme', scheme: vessels.scheme };
    case 'chosen':
      return { which: 'chosen', vesselIds: vessels.vesselIds.filter((id) => seen === 'all' || seen.includes(id)) };
  }
}

function presentLimit(limit: OwnRuleDefinition['limits'][number]): OwnRuleText['limits'][number] {
  switch (limit.kind) {
    case 'interval':
      return { kind: 'interval', from: limit.from, plus: limit.plus };
    case 'printed_expiry':
      return { kind: 'printed_expiry' };
    case 'running_hours':
      return { kind: 'running_hours', hours: limit.hours };
    case 'before_event':
      return { kind: 'before_event', event: limit.event, within: limit.within };
  }
}

export function presentRuleChange(record: RuleChangeRecord) {
  return withoutNulls({
    id: record.id,
    ruleId: record.ruleId,
    number: record.number,
    state: record.finishedAt === null ? ('running' as const) : ('done' as const),
    itemsTotal: record.itemsTotal,
    itemsDone: record.itemsDone,
    obligationsChanged: record.obligationsChanged,
    begunAt: record.begunAt,
    finishedAt: record.finishedAt,
  });
}
