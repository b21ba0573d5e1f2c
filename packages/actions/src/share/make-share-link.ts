/** Makes a link that shows some vessels, or the whole fleet's list, to an outsider. */
import { loadFindingsByIds } from '@garboard/db/finding/findings.ts';
import { mintToken } from '@garboard/db/organisation/token.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { insertShareLink, type ShareLinkRecord } from '@garboard/db/share/share-links.ts';
import { isOpen } from '@garboard/domain/finding/next-state.ts';
import { type Share, shareFaults } from '@garboard/domain/share/share-link.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { unknownVessels } from '../organisation/grant-checks.ts';
import { done, type Fault, type Result, refused, type Written } from '../result.ts';
import { toldOnce } from '../told-once.ts';
import { write } from '../write.ts';

export type NewShareLink = Share & { readonly expiresAt: Date };
/** `text`: what the address ends with; `null` for a repeated request, which does not get it again. */
export type LinkWithText = { readonly link: ShareLinkRecord; readonly text: string | null };

export async function makeShareLink(
  ctx: ActionContext,
  wanted: NewShareLink,
): Promise<Written<LinkWithText, 'invalid'>> {
  const token = mintToken('share_link', ctx.organisationId, newId(ctx.now));
  const result = await write<Result<ShareLinkRecord, 'invalid'>>(ctx, 'share', async (write) => {
    const errors = await faultsOf(write.tx, wanted, ctx.now);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const link = newLink(ctx, token.id, await reachOf(write.tx, wanted));
    await insertShareLink(write.tx, token, link);
    const { views, lastViewedAt, ...after } = link;
    audit(write, { verb: 'make_share_link', subject: 'share_link', subjectId: link.id, before: null, after });
    return done(link);
  });
  return toldOnce(result, token.text, (link, text) => ({ link, text }));
}

async function faultsOf(tx: Scoped, wanted: NewShareLink, now: Date): Promise<Fault[]> {
  const { vesselIds, expiresAt } = wanted;
  const own = shareFaults(wanted, expiresAt, now).map(({ at, detail }) => ({ pointer: `/${at}`, detail }));
  return [...own, ...(await unknownVessels(tx, vesselIds)), ...(await unknownWork(tx, wanted.findingIds))];
}

/** A yard is given what is open; its link reaches the vessels of that work and no others. */
async function unknownWork(tx: Scoped, findingIds: readonly string[]): Promise<Fault[]> {
  const open = new Set(
    (await loadFindingsByIds(tx, findingIds)).filter(({ finding }) => isOpen(finding.remedy.state)).map(({ id }) => id),
  );
  return findingIds.flatMap((id, index) =>
    open.has(id) ? [] : [{ pointer: `/findingIds/${index}`, detail: 'is no open finding here' }],
  );
}

async function reachOf(tx: Scoped, wanted: NewShareLink): Promise<NewShareLink> {
  if (wanted.purpose !== 'yard') return wanted;
  const work = await loadFindingsByIds(tx, wanted.findingIds);
  return { ...wanted, vesselIds: [...new Set(work.map(({ vesselId }) => vesselId))] };
}

function newLink(ctx: ActionContext, id: string, { expiresAt, ...share }: NewShareLink): ShareLinkRecord {
  return {
    ...share,
    id,
    madeBy: actorText(ctx.actor),
    createdAt: ctx.now.toISOString(),
    expiresAt: expiresAt.toISOString(),
    revokedAt: null,
    views: 0,
    lastViewedAt: null,
    version: 1,
  };
}
