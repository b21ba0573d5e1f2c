/** Links for outsiders of the organisation of the scope. Only hashes of their secrets are here. */
import type { Share, SharePurpose } from '@garboard/domain/share/share-link.ts';
import { type Selectable, sql } from 'kysely';
import { hashSecret, isSecretOf, type Token } from '../organisation/token.ts';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { ShareLinkTable } from './tables.ts';

export type ShareLinkRecord = Share & {
  readonly id: string;
  readonly madeBy: string;
  readonly createdAt: string;
  readonly expiresAt: string;
  readonly revokedAt: string | null;
  readonly views: number;
  readonly lastViewedAt: string | null;
  readonly version: number;
};

const links = (tx: Scoped) =>
  tx
    .selectFrom('share_link as l')
    .selectAll('l')
    .select((eb) => [
      eb
        .selectFrom('share_view as v')
        .whereRef('v.link_id', '=', 'l.id')
        .select(({ fn }) => fn.countAll<string>().as('n'))
        .as('views'),
      eb
        .selectFrom('share_view as v')
        .whereRef('v.link_id', '=', 'l.id')
        .select(({ fn }) => fn.max('v.at').as('last'))
        .as('last_viewed_at'),
    ]);

/** Those that are over too: what was shown to whom stays known. */
export async function listShareLinks(
  tx: Scoped,
  limit: number,
  after?: { id: string },
): Promise<Page<ShareLinkRecord>> {
  let query = links(tx)
    .orderBy('l.id', 'desc')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('l.id', '<', after.id);
  return pageOf((await query.execute()).map(toRecord), limit);
}

export async function loadShareLink(tx: Scoped, id: string): Promise<ShareLinkRecord | null> {
  const row = await links(tx).where('l.id', '=', id).executeTakeFirst();
  return row ? toRecord(row) : null;
}

export async function lockShareLink(tx: Scoped, id: string): Promise<ShareLinkRecord | null> {
  const row = await links(tx).where('l.id', '=', id).forUpdate('l').executeTakeFirst();
  return row ? toRecord(row) : null;
}

export type ShownLink = Share & { readonly id: string; readonly expiresAt: string };

/** What a look needs, without counting the looks before. `null` when it never was, is revoked, or has run out. */
export async function findShareLink(tx: Scoped, token: Token, now: Date): Promise<ShownLink | null> {
  const row = await tx
    .selectFrom('share_link')
    .selectAll()
    .where('id', '=', token.id)
    .where('revoked_at', 'is', null)
    .where('expires_at', '>', now)
    .executeTakeFirst();
  return row && isSecretOf(token.secret, row.secret_hash) ? shownBy(row) : null;
}

export async function insertShareLink(tx: Scoped, token: Token, record: ShareLinkRecord): Promise<void> {
  await tx
    .insertInto('share_link')
    .values({
      organisation_id: token.organisationId,
      id: token.id,
      label: record.label,
      vessel_ids: record.vesselIds === 'all' ? null : [...record.vesselIds],
      shows_value: record.showsValue,
      purpose: record.purpose,
      finding_ids: record.findingIds.length === 0 ? null : [...record.findingIds],
      secret_hash: hashSecret(token.secret),
      made_by: record.madeBy,
      created_at: record.createdAt,
      expires_at: record.expiresAt,
    })
    .execute();
}

export async function revokeShareLink(tx: Scoped, { id, version }: ShareLinkRecord, now: Date): Promise<void> {
  await tx
    .updateTable('share_link')
    .set({ revoked_at: now, version: version + 1 })
    .where('id', '=', id)
    .execute();
}

export type Look = { readonly id: string; readonly at: Date; readonly userAgent: string | null };

export async function noteLook(tx: Scoped, { organisationId, id: linkId }: Token, look: Look): Promise<void> {
  const { id, at, userAgent } = look;
  await tx
    .insertInto('share_view')
    .values({ organisation_id: organisationId, id, link_id: linkId, at, user_agent: userAgent })
    .execute();
}

/** The latest first. */
export async function listLooks(
  tx: Scoped,
  linkId: string,
  limit: number,
  after?: { id: string },
): Promise<Page<Look>> {
  let query = tx
    .selectFrom('share_view')
    .select(['id', 'at', 'user_agent as userAgent'])
    .where('link_id', '=', linkId)
    .orderBy('id', 'desc')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('id', '<', after.id);
  return pageOf(await query.execute(), limit);
}

type Row = Selectable<ShareLinkTable> & { views: string | null; last_viewed_at: Date | null };

const shownBy = (row: Selectable<ShareLinkTable>): ShownLink => ({
  id: row.id,
  purpose: row.purpose as SharePurpose,
  findingIds: row.finding_ids ?? [],
  label: row.label,
  vesselIds: row.vessel_ids ?? 'all',
  showsValue: row.shows_value,
  expiresAt: row.expires_at.toISOString(),
});

function toRecord(row: Row): ShareLinkRecord {
  return {
    ...shownBy(row),
    madeBy: row.made_by,
    createdAt: row.created_at.toISOString(),
    revokedAt: row.revoked_at?.toISOString() ?? null,
    views: Number(row.views ?? 0),
    lastViewedAt: row.last_viewed_at?.toISOString() ?? null,
    version: row.version,
  };
}
