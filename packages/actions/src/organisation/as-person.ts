/** A person acting in an organisation whose role for them is known only inside the transaction. */
import { type Scoped, wholeFleet } from '@garboard/db/scope.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import type { PersonContext } from '../context.ts';
import type { Write } from '../write.ts';

export function asPerson(
  { db, person, requestId, now }: PersonContext,
  tx: Scoped,
  organisationId: string,
  role: Role,
): Write {
  const actor = { kind: 'person', id: person.id, sessionId: person.sessionId, role } as const;
  return { tx, ctx: { ...wholeFleet(organisationId), db, actor, requestId, now } };
}
