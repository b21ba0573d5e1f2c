/** Using up a one-time link. The session itself is opened by whoever keeps the accounts. */
import { takeSignInLink } from '@garboard/db/organisation/credentials.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { audit } from '../audit.ts';
import { asUpkeep } from './as-upkeep.ts';

export type SignInBy = { readonly personId: string; readonly organisationId: string };

/** Answers with whom the link signs in, and where; `null` when it is unknown, used or out of date. */
export async function useSignInLink(db: Db, text: string, now: Date, requestId: string): Promise<SignInBy | null> {
  const link = readToken(text);
  if (link?.kind !== 'sign_in_link') return null;
  const { organisationId } = link;
  return inOrganisation(db, wholeFleet(organisationId), async (tx) => {
    const personId = await takeSignInLink(tx, link, now);
    if (personId === null) return null;
    const { ctx } = asUpkeep(db, tx, organisationId, now);
    const after = { link: link.id };
    audit(
      { tx, ctx: { ...ctx, requestId } },
      { verb: 'sign_in', subject: 'person', subjectId: personId, before: null, after },
    );
    return { personId, organisationId };
  });
}
