/** Signing in by a one-time link, and signing out. */
import { deleteSession, insertSession, takeSignInLink } from '@garboard/db/organisation/credentials.ts';
import { mintToken, readToken } from '@garboard/db/organisation/token.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';

const DAY_MS = 86_400_000;
/** House convention, no source. */
export const SESSION_DAYS = 30;

/** Uses the link up and answers with the session's token; `null` when the link is unknown, used or out of date. */
export async function useSignInLink(db: Db, text: string, now: Date, requestId: string): Promise<string | null> {
  const link = readToken(text);
  if (link?.kind !== 'sign_in_link') return null;
  return inOrganisation(db, wholeFleet(link.organisationId), async (tx) => {
    const role = await takeSignInLink(tx, link, now);
    if (!role) return null;
    const session = mintToken('session', link.organisationId, newId(now));
    await insertSession(tx, { token: session, role, now, expiresAt: new Date(now.getTime() + SESSION_DAYS * DAY_MS) });
    const ctx: ActionContext = {
      db,
      ...wholeFleet(link.organisationId),
      actor: { kind: 'session', id: session.id, role },
      requestId,
      now,
    };
    audit(
      { tx, ctx },
      { verb: 'sign_in', subject: 'session', subjectId: session.id, before: null, after: { role, link: link.id } },
    );
    return session.text;
  });
}

/** Does nothing for a program's key: there is no session to end. */
export async function endSession(ctx: ActionContext): Promise<void> {
  if (ctx.actor.kind !== 'session') return;
  await inOrganisation(ctx.db, ctx, async (tx) => {
    await deleteSession(tx, ctx.actor.id);
    audit({ tx, ctx }, { verb: 'sign_out', subject: 'session', subjectId: ctx.actor.id, before: null, after: null });
  });
}
