/** Somebody outside opens a link: the look is written down, and what it shows is read in the scope of its vessels alone. */
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Db } from '@garboard/db/pool.ts';
import { enterScope, inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { readShared, type Shared } from '@garboard/db/share/read-shared.ts';
import { readWork, type SharedWork } from '@garboard/db/share/read-work.ts';
import { findShareLink, noteLook, type ShownLink } from '@garboard/db/share/share-links.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { newId } from '../new-id.ts';

export type Look = {
  readonly db: Db;
  readonly text: string;
  readonly now: Date;
  readonly userAgent: string | null;
};
const NOTHING_BUT_WORK: Shared = { vessels: [], due: [], isCut: false };

export type Seen = Shared & SharedWork & { readonly link: ShownLink; readonly organisation: string; readonly day: Day };

/** `null` when the link never was, is revoked, or has run out: an outsider learns nothing of which. */
export async function lookAtShared({ db, text, now, userAgent }: Look): Promise<Seen | null> {
  const token = readToken(text);
  if (token?.kind !== 'share_link') return null;
  const { organisationId } = token;
  return inOrganisation(db, wholeFleet(organisationId), async (tx) => {
    const link = await findShareLink(tx, token, now);
    if (!link) return null;
    await noteLook(tx, token, { id: newId(now), at: now, userAgent });
    const { name, timeZone } = await loadOrganisation(tx);
    await enterScope(tx, { organisationId, vesselIds: link.vesselIds });
    const day = dayInZone(now, timeZone);
    const shown = link.purpose === 'yard' ? NOTHING_BUT_WORK : await readShared(tx, day);
    return { link, organisation: name, day, ...shown, ...(await readWork(tx, link)) };
  });
}
