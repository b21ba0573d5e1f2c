/** An organisation's own figure as the API shows it. */
import type { Override } from '@garboard/contract/rule/override.ts';
import type { OverrideEnding, OverrideRecord } from '@garboard/db/rule/override-record.ts';
import { withoutNulls } from '../request/without-nulls.ts';

/** Part by part, so that a repeated answer is the same to the byte. */
export function presentOverride(record: OverrideRecord): Override {
  return withoutNulls({
    id: record.id,
    vesselId: record.vesselId,
    itemId: record.itemId,
    ruleId: record.ruleId,
    duty: record.duty,
    period: record.period,
    weight: record.weight,
    decidedBy: record.decidedBy,
    reason: record.reason,
    document: record.document,
    from: record.from,
    recordedAt: record.recordedAt,
    recordedBy: record.recordedBy,
    ended: record.ended && presentEnding(record.ended),
    version: record.version,
  });
}

function presentEnding({ on, reason, recordedAt, recordedBy }: OverrideEnding) {
  return { on, reason, recordedAt, recordedBy };
}
