/** One audit row a change, in the change's own transaction. */
import { noteAudit } from '@garboard/db/audit/append-audit.ts';
import type { AuditRow } from '@garboard/db/audit/audit-row.ts';
import type { Actor } from './context.ts';
import { newId } from './new-id.ts';
import type { Write } from './write.ts';

export type Change = Pick<AuditRow, 'verb' | 'subject' | 'subjectId' | 'before' | 'after'>;

/** The row is written with the transaction's last statements; a transaction that cannot write it does not commit. */
export function audit({ tx, ctx }: Write, change: Change): void {
  noteAudit(tx, ctx.organisationId, {
    ...change,
    id: newId(ctx.now),
    at: ctx.now,
    actor: actorText(ctx.actor),
    credential: credentialText(ctx.actor),
    role: ctx.actor.role,
    requestId: ctx.requestId,
  });
}

export const actorText = ({ kind, id }: Actor) => `${kind}:${id}`;

/** What was shown to get in. */
function credentialText(actor: Actor): string {
  switch (actor.kind) {
    case 'person':
      return `session:${actor.sessionId}`;
    case 'api_key':
    case 'share_link':
    case 'upkeep':
      return actorText(actor);
  }
}
