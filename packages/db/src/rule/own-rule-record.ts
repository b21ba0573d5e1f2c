/** An own rule's rows, as a record for the API and as versions for the rules. */
import { parseDay } from '@garboard/domain/calendar/day.ts';
import type { OwnRuleDefinition, OwnRuleGrounds, OwnRuleVersion } from '@garboard/domain/rule/own-rule.ts';
import { ownRuleAsRule } from '@garboard/domain/rule/own-rule-as-rule.ts';
import type { Insertable, Selectable } from 'kysely';
import type { OwnRuleVersionTable } from './tables.ts';

export type OwnRuleVersionRecord = OwnRuleGrounds & {
  readonly number: number;
  readonly takesEffectOn: string;
  /** `null`: it ends the rule. */
  readonly definition: OwnRuleDefinition | null;
  readonly recordedAt: string;
  readonly recordedBy: string;
  /** The change that it makes to what is stored; `null` until its day has come. */
  readonly changeId: string | null;
};

/** `versions` in the order in which they were recorded; `version` counts on with each laid down or taken up. */
export type OwnRuleRecord = {
  readonly id: string;
  readonly version: number;
  readonly versions: readonly OwnRuleVersionRecord[];
};

export type OwnRuleRow = Selectable<OwnRuleVersionTable> & {
  readonly change_id: string | null;
  readonly rule_version: number;
};

export function toVersionRecord(row: OwnRuleRow): OwnRuleVersionRecord {
  return {
    number: row.number,
    takesEffectOn: row.takes_effect_on,
    definition: row.definition as OwnRuleDefinition | null,
    decidedBy: row.decided_by,
    reason: row.reason,
    document: row.document,
    recordedAt: row.recorded_at.toISOString(),
    recordedBy: row.set_by,
    changeId: row.change_id,
  };
}

export function toVersionColumns(
  organisationId: string,
  ruleId: string,
  version: Omit<OwnRuleVersionRecord, 'changeId'>,
): Insertable<OwnRuleVersionTable> {
  return {
    organisation_id: organisationId,
    rule_id: ruleId,
    number: version.number,
    takes_effect_on: version.takesEffectOn,
    definition: version.definition && JSON.stringify(version.definition),
    decided_by: version.decidedBy,
    reason: version.reason,
    document: version.document,
    set_by: version.recordedBy,
    recorded_at: version.recordedAt,
  };
}

/** The same as the rules read it. */
export function toOwnRuleVersion(ruleId: string, record: OwnRuleVersionRecord): OwnRuleVersion {
  const takesEffectOn = parseDay(record.takesEffectOn);
  if (takesEffectOn === null) throw new Error(`own rule ${ruleId}: no day ${record.takesEffectOn}`);
  const { number, recordedAt, definition } = record;
  return {
    ...{ ruleId, number, takesEffectOn, recordedAt },
    vessels: definition?.vessels ?? { which: 'all' },
    rule: definition && ownRuleAsRule(ruleId, definition, { ...record, takesEffectOn }),
  };
}
