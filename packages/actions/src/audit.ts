/** One audit row a change, in the change's own transaction. */
import { type AuditRow, insertAudit } from '@garboard/db/audit/insert-audit.ts';
import type { Actor } from './context.ts';
import { newId } from './new-id.ts';
import type { Write } from './write.ts';

export type Change = Pick<AuditRow, 'verb' | 'subject' | 'subjectId' | 'before' | 'after'>;

export async function audit({ tx, ctx }: Write, change: Change): Promise<void> {
  await insertAudit(tx, ctx.organisationId, {
    ...change,
    id: newId(ctx.now),
    at: ctx.now,
    actor: actorText(ctx.actor),
    requestId: ctx.requestId,
  });
}

export const actorText = ({ kind, id }: Actor) => `${kind}:${id}`;
