/** Photographs and papers one by one and in lists, the latest taken first. */
import type { EvidenceSaid } from '@garboard/domain/evidence/evidence.ts';
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { EvidenceTable } from './tables.ts';

/** `sizePx` is `null` where it is kept and can be taken, but not shown. `sha256` in lower-case hexadecimal. */
export type EvidenceRecord = EvidenceSaid & {
  readonly id: string;
  readonly vesselId: string;
  readonly sha256: string;
  readonly mediaType: string;
  readonly bytes: number;
  readonly sizePx: { readonly width: number; readonly height: number } | null;
  readonly recordedBy: string;
  readonly recordedAt: string;
};

export async function insertEvidence(tx: Scoped, organisationId: string, record: EvidenceRecord): Promise<void> {
  await tx
    .insertInto('evidence')
    .values({
      organisation_id: organisationId,
      id: record.id,
      vessel_id: record.vesselId,
      visit_id: record.visitId,
      zone: record.zone,
      point: record.point,
      words: record.words,
      taken_on: record.takenOn,
      sha256: Buffer.from(record.sha256, 'hex'),
      media_type: record.mediaType,
      bytes: record.bytes,
      width_px: record.sizePx?.width ?? null,
      height_px: record.sizePx?.height ?? null,
      recorded_by: record.recordedBy,
      recorded_at: record.recordedAt,
    })
    .execute();
}

export async function loadEvidence(tx: Scoped, id: string): Promise<EvidenceRecord | null> {
  const row = await tx.selectFrom('evidence').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toEvidence(row) : null;
}

/** Of these the ones that are the vessel's. */
export async function loadEvidenceIds(tx: Scoped, vesselId: string, ids: readonly string[]): Promise<Set<string>> {
  if (ids.length === 0) return new Set();
  const rows = await tx
    .selectFrom('evidence')
    .select('id')
    .where('vessel_id', '=', vesselId)
    .where('id', 'in', ids)
    .execute();
  return new Set(rows.map(({ id }) => id));
}

export async function loadEvidenceOfVisit(tx: Scoped, visitId: string): Promise<EvidenceRecord[]> {
  const rows = await tx.selectFrom('evidence').selectAll().where('visit_id', '=', visitId).orderBy('id').execute();
  return rows.map(toEvidence);
}

export type EvidenceFilter = {
  readonly vesselId: string;
  readonly zone?: string;
  readonly point?: string;
  readonly visitId?: string;
};
export type EvidenceKey = { readonly on: string; readonly id: string };

export async function listEvidence(
  tx: Scoped,
  filter: EvidenceFilter,
  limit: number,
  before?: EvidenceKey,
): Promise<Page<EvidenceRecord>> {
  let query = tx
    .selectFrom('evidence')
    .selectAll()
    .where('vessel_id', '=', filter.vesselId)
    .orderBy('taken_on', 'desc')
    .orderBy('id', 'desc')
    .limit(sql.lit(limit + 1));
  if (filter.zone) query = query.where('zone', '=', filter.zone);
  if (filter.point) query = query.where('point', '=', filter.point);
  if (filter.visitId) query = query.where('visit_id', '=', filter.visitId);
  if (before) query = query.where(sql<boolean>`(taken_on, id) < (${before.on}::date, ${before.id}::uuid)`);
  return pageOf((await query.execute()).map(toEvidence), limit);
}

/** The hashes of everything that is kept, for whoever looks after the store. */
export async function loadKeptHashes(tx: Scoped): Promise<string[]> {
  const rows = await tx.selectFrom('evidence').select('sha256').distinct().execute();
  return rows.map(({ sha256 }) => sha256.toString('hex'));
}

export async function isKept(tx: Scoped, sha256: string): Promise<boolean> {
  const row = await tx
    .selectFrom('evidence')
    .select('id')
    .where('sha256', '=', Buffer.from(sha256, 'hex'))
    .limit(sql.lit(1))
    .executeTakeFirst();
  return row !== undefined;
}

function toEvidence(row: Selectable<EvidenceTable>): EvidenceRecord {
  const { id, zone, point, words, bytes, width_px: width, height_px: height } = row;
  return {
    ...{ id, zone, point, words, bytes },
    vesselId: row.vessel_id,
    visitId: row.visit_id,
    takenOn: row.taken_on,
    sha256: row.sha256.toString('hex'),
    mediaType: row.media_type,
    sizePx: width === null || height === null ? null : { width, height },
    recordedBy: row.recorded_by,
    recordedAt: row.recorded_at.toISOString(),
  };
}
