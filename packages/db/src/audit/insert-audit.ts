/** Who changed what: one row a change, in the change's own transaction. */
import type { Scoped } from '../scope.ts';

export type AuditRow = {
  readonly id: string;
  readonly at: Date;
  readonly actor: string;
  readonly requestId: string;
  readonly verb: string;
  readonly subject:
    | 'vessel'
    | 'item'
    | 'fact'
    | 'situation'
    | 'event'
    | 'override'
    | 'rule'
    | 'rule_change'
    | 'saved_view'
    | 'api_key'
    | 'session'
    | 'organisation';
  readonly subjectId: string;
  readonly before: unknown;
  readonly after: unknown;
};

export async function insertAudit(tx: Scoped, organisationId: string, row: AuditRow): Promise<void> {
  await tx
    .insertInto('audit')
    .values({
      organisation_id: organisationId,
      id: row.id,
      at: row.at,
      actor: row.actor,
      request_id: row.requestId,
      verb: row.verb,
      subject: row.subject,
      subject_id: row.subjectId,
      before: json(row.before),
      after: json(row.after),
    })
    .execute();
}

const json = (value: unknown) => (value === null || value === undefined ? null : JSON.stringify(value));
