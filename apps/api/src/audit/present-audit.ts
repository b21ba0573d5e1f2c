/** A row of the audit as the API shows it. */
import type { AuditEntry } from '@garboard/contract/audit/audit.ts';
import type { ListedAudit } from '@garboard/db/audit/list-audit.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentAudit(row: ListedAudit): AuditEntry {
  const [kind = '', id = ''] = row.actor.split(':');
  return {
    ...withoutNulls({
      id: row.id,
      at: row.at.toISOString(),
      role: row.role,
      credential: row.credential,
      requestId: row.requestId,
      verb: row.verb,
      subject: row.subject,
      subjectId: row.subjectId,
      before: row.before,
      after: row.after,
      sequence: row.sequence,
      hash: row.hash?.toString('hex') ?? null,
    }),
    actor: withoutNulls({ kind, id, name: row.actorName }),
    about: withoutNulls({
      vesselId: row.vesselId,
      vesselName: row.vesselName,
      itemId: row.itemId,
      itemLabel: row.itemLabel,
    }),
  };
}
