/** The obligations that an override bears on: of its item, or of everything aboard of the rule's kinds. */
import type { OverrideRecord } from '@garboard/db/rule/override-record.ts';
import { listItemIdsOfKinds } from '@garboard/db/rule/overrides.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';

export async function refreshTouched(
  tx: Scoped,
  organisationId: string,
  { vesselId, itemId, ruleId }: Pick<OverrideRecord, 'vesselId' | 'itemId' | 'ruleId'>,
): Promise<void> {
  const kinds = findRule(ruleId)?.kinds ?? [];
  const touched = itemId !== null ? [itemId] : kinds.length > 0 ? await listItemIdsOfKinds(tx, vesselId, kinds) : [];
  if (touched.length > 0) await refreshObligations(tx, organisationId, vesselId, touched);
}
