/** An organisation's own rules: one statement a question. Versions are only added. */
import type { OwnRuleVersion } from '@garboard/domain/rule/own-rule.ts';
import type { Scoped } from '../scope.ts';
import {
  type OwnRuleRecord,
  type OwnRuleRow,
  type OwnRuleVersionRecord,
  toOwnRuleVersion,
  toVersionColumns,
  toVersionRecord,
} from './own-rule-record.ts';

export async function loadOwnRule(tx: Scoped, id: string): Promise<OwnRuleRecord | null> {
  const rows = await versionRows(tx).where('v.rule_id', '=', id).execute();
  return toRecords(rows)[0] ?? null;
}

/** Every one, ended ones too, in the order in which they were made. */
export async function listOwnRules(tx: Scoped): Promise<OwnRuleRecord[]> {
  return toRecords(await versionRows(tx).execute());
}

/** Loads it and holds its row until the transaction ends, so that versions come one after the other. */
export async function lockOwnRule(tx: Scoped, id: string): Promise<OwnRuleRecord | null> {
  const row = await tx.selectFrom('own_rule').select('id').where('id', '=', id).forUpdate().executeTakeFirst();
  return row ? loadOwnRule(tx, id) : null;
}

/** As the rules read them: every version, or those whose change has begun and so count for what is stored. */
export async function loadOwnRuleVersions(tx: Scoped, which: 'every' | 'begun'): Promise<OwnRuleVersion[]> {
  const rows = await versionRows(tx).execute();
  return rows
    .filter(({ change_id }) => which === 'every' || change_id !== null)
    .map((row) => toOwnRuleVersion(row.rule_id, toVersionRecord(row)));
}

/** Versions whose day has come and whose change has not begun, the earliest day first; of one rule where it is named. */
export async function listVersionsToBegin(
  tx: Scoped,
  today: string,
  ruleId?: string,
): Promise<{ readonly ruleId: string; readonly number: number }[]> {
  const rows = ruleId === undefined ? versionRows(tx) : versionRows(tx).where('v.rule_id', '=', ruleId);
  return rows
    .clearSelect()
    .select(['v.rule_id as ruleId', 'v.number'])
    .where('c.id', 'is', null)
    .where('v.takes_effect_on', '<=', today)
    .clearOrderBy()
    .orderBy('v.takes_effect_on')
    .orderBy('v.rule_id')
    .orderBy('v.number')
    .execute();
}

export async function insertOwnRule(
  tx: Scoped,
  organisationId: string,
  rule: { readonly id: string; readonly createdAt: string },
): Promise<void> {
  await tx
    .insertInto('own_rule')
    .values({ organisation_id: organisationId, id: rule.id, version: 0, created_at: rule.createdAt })
    .execute();
}

export async function insertOwnRuleVersion(
  tx: Scoped,
  organisationId: string,
  ruleId: string,
  version: Omit<OwnRuleVersionRecord, 'changeId'>,
): Promise<void> {
  await tx
    .insertInto('own_rule_version')
    .values(toVersionColumns(organisationId, ruleId, version))
    .execute();
  await touchOwnRule(tx, ruleId);
}

/** Its `ETag` is another from now on. */
export async function touchOwnRule(tx: Scoped, id: string): Promise<void> {
  await tx
    .updateTable('own_rule')
    .set((eb) => ({ version: eb('version', '+', 1) }))
    .where('id', '=', id)
    .execute();
}

function versionRows(tx: Scoped) {
  return tx
    .selectFrom('own_rule_version as v')
    .innerJoin('own_rule as r', (join) =>
      join.onRef('r.organisation_id', '=', 'v.organisation_id').onRef('r.id', '=', 'v.rule_id'),
    )
    .leftJoin('rule_change as c', (join) =>
      join
        .onRef('c.organisation_id', '=', 'v.organisation_id')
        .onRef('c.rule_id', '=', 'v.rule_id')
        .onRef('c.number', '=', 'v.number'),
    )
    .selectAll('v')
    .select(['c.id as change_id', 'r.version as rule_version'])
    .orderBy('v.rule_id')
    .orderBy('v.number');
}

function toRecords(rows: readonly OwnRuleRow[]): OwnRuleRecord[] {
  const byRule = Map.groupBy(rows, ({ rule_id }) => rule_id);
  return [...byRule].map(([id, its]) => ({
    id,
    version: its[0]?.rule_version ?? 0,
    versions: its.map(toVersionRecord),
  }));
}
