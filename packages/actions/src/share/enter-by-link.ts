/** An outsider comes in by a link that lets them do something: who that is, and which vessels they may touch. */
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { findShareLink, type ShownLink } from '@garboard/db/share/share-links.ts';
import type { SharePurpose } from '@garboard/domain/share/share-link.ts';
import type { ActionContext } from '../context.ts';

export type ByLink = { readonly db: Db; readonly text: string; readonly now: Date; readonly requestId: string };
export type Entered = { readonly link: ShownLink; readonly ctx: ActionContext };

/** `null` when there is no such link for this purpose, it is revoked or has run out: nobody learns which. */
export async function enterByLink(
  { db, text, now, requestId }: ByLink,
  purpose: SharePurpose,
): Promise<Entered | null> {
  const token = readToken(text);
  if (token?.kind !== 'share_link') return null;
  const { organisationId } = token;
  const link = await inOrganisation(db, wholeFleet(organisationId), (tx) => findShareLink(tx, token, now));
  if (link?.purpose !== purpose) return null;
  const actor = { kind: 'share_link', id: link.id, role: 'yard', only: ['answer_findings'] } as const;
  return { link, ctx: { db, organisationId, vesselIds: link.vesselIds, actor, requestId, now } };
}
