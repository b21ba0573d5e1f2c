/** Visits one by one and in lists, the latest first. */
import type { Purpose } from '@garboard/domain/survey-visit/codes.ts';
import type { Craft } from '@garboard/domain/survey-visit/zones.ts';
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { SurveyVisitTable } from './tables.ts';
import type { VisitRecord } from './visit-record.ts';

type Row = Selectable<SurveyVisitTable> & { vessel_name: string; time_zone: string };

export type VisitFilter = { readonly vesselId?: string; readonly state?: 'open' | 'completed' };
export type VisitKey = { readonly on: string; readonly id: string };

function visits(tx: Scoped) {
  return tx
    .selectFrom('survey_visit as s')
    .innerJoin('vessel as v', (join) =>
      join.onRef('v.organisation_id', '=', 's.organisation_id').onRef('v.id', '=', 's.vessel_id'),
    )
    .selectAll('s')
    .select(['v.name as vessel_name', 'v.time_zone']);
}

export async function loadVisit(tx: Scoped, visitId: string): Promise<VisitRecord | null> {
  const row = await visits(tx).where('s.id', '=', visitId).executeTakeFirst();
  return row ? toVisit(row) : null;
}

export async function listVisits(
  tx: Scoped,
  filter: VisitFilter,
  limit: number,
  before?: VisitKey,
): Promise<Page<VisitRecord>> {
  let query = visits(tx)
    .orderBy('s.started_on', 'desc')
    .orderBy('s.id', 'desc')
    .limit(sql.lit(limit + 1));
  if (filter.vesselId) query = query.where('s.vessel_id', '=', filter.vesselId);
  if (filter.state) query = query.where('s.completed_at', filter.state === 'open' ? 'is' : 'is not', null);
  if (before) query = query.where(sql<boolean>`(s.started_on, s.id) < (${before.on}::date, ${before.id}::uuid)`);
  return pageOf((await query.execute()).map(toVisit), limit);
}

export async function insertVisit(
  tx: Scoped,
  organisationId: string,
  visit: VisitRecord,
  createdAt: Date,
): Promise<void> {
  await tx
    .insertInto('survey_visit')
    .values({
      organisation_id: organisationId,
      id: visit.id,
      vessel_id: visit.vesselId,
      craft: visit.craft,
      purpose: visit.purpose,
      started_on: visit.startedOn,
      detail: JSON.stringify(visit.detail),
      route: JSON.stringify(visit.route),
      created_by: visit.createdBy,
      created_at: createdAt,
    })
    .execute();
}

/** `false` when somebody was faster. */
export async function saveVisit(
  tx: Scoped,
  { id, version }: VisitRecord,
  { purpose, detail }: VisitRecord,
): Promise<boolean> {
  const { numUpdatedRows } = await tx
    .updateTable('survey_visit')
    .set({ purpose, detail: JSON.stringify(detail), version: version + 1 })
    .where('id', '=', id)
    .where('version', '=', version)
    .executeTakeFirstOrThrow();
  return numUpdatedRows === 1n;
}

type Seal = {
  readonly on: string;
  readonly at: Date;
  readonly by: string;
  readonly sealed: string;
  readonly hash: Buffer;
};

export async function sealVisit(tx: Scoped, { id, version }: VisitRecord, seal: Seal): Promise<void> {
  await tx
    .updateTable('survey_visit')
    .set({
      completed_on: seal.on,
      completed_at: seal.at,
      completed_by: seal.by,
      sealed: seal.sealed,
      sealed_hash: seal.hash,
      version: version + 1,
    })
    .where('id', '=', id)
    .execute();
}

export async function loadSealed(tx: Scoped, visitId: string): Promise<{ sealed: string; hash: string } | null> {
  const row = await tx
    .selectFrom('survey_visit')
    .select(['sealed', 'sealed_hash'])
    .where('id', '=', visitId)
    .executeTakeFirst();
  return row?.sealed && row.sealed_hash ? { sealed: row.sealed, hash: row.sealed_hash.toString('hex') } : null;
}

function toVisit(row: Row): VisitRecord {
  const { completed_on, completed_at, completed_by, sealed_hash } = row;
  const completed =
    completed_on && completed_at && completed_by && sealed_hash
      ? {
          on: completed_on,
          at: new Date(completed_at).toISOString(),
          by: completed_by,
          hash: sealed_hash.toString('hex'),
        }
      : null;
  return {
    id: row.id,
    vesselId: row.vessel_id,
    vesselName: row.vessel_name,
    timeZone: row.time_zone,
    craft: row.craft as Craft,
    purpose: row.purpose as Purpose,
    startedOn: row.started_on,
    detail: row.detail,
    route: row.route,
    createdBy: row.created_by,
    completed,
    version: row.version,
  };
}
