/** What could not be examined, until somebody has looked. */
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { LimitationTable } from './tables.ts';
import type { LimitationAnswer, LimitationRecord } from './visit-record.ts';

type Row = Selectable<LimitationTable> & { vessel_name: string };

function limitations(tx: Scoped) {
  return tx
    .selectFrom('limitation as l')
    .innerJoin('vessel as v', (join) =>
      join.onRef('v.organisation_id', '=', 'l.organisation_id').onRef('v.id', '=', 'l.vessel_id'),
    )
    .selectAll('l')
    .select('v.name as vessel_name');
}

export async function loadLimitation(tx: Scoped, id: string): Promise<LimitationRecord | null> {
  const row = await limitations(tx).where('l.id', '=', id).executeTakeFirst();
  return row ? toLimitation(row) : null;
}

/** Those not lifted. */
export async function loadUnlifted(tx: Scoped, vesselId: string): Promise<LimitationRecord[]> {
  const rows = await limitations(tx)
    .where('l.vessel_id', '=', vesselId)
    .where('l.lifted_on', 'is', null)
    .orderBy('l.id')
    .execute();
  return rows.map(toLimitation);
}

/** All that the visit imposed or answered. */
export async function loadLimitationsOfVisit(tx: Scoped, visitId: string): Promise<LimitationRecord[]> {
  const answered = tx.selectFrom('limitation_answer').select('limitation_id').where('visit_id', '=', visitId);
  const rows = await limitations(tx)
    .where((where) => where.or([where('l.visit_id', '=', visitId), where('l.id', 'in', answered)]))
    .orderBy('l.id')
    .execute();
  return rows.map(toLimitation);
}

type Filter = { readonly vesselId?: string; readonly lifted?: boolean };

export async function listLimitations(
  tx: Scoped,
  filter: Filter,
  limit: number,
  after?: { id: string },
): Promise<Page<LimitationRecord>> {
  let query = limitations(tx)
    .orderBy('l.id')
    .limit(sql.lit(limit + 1));
  if (filter.vesselId) query = query.where('l.vessel_id', '=', filter.vesselId);
  if (filter.lifted !== undefined) query = query.where('l.lifted_on', filter.lifted ? 'is not' : 'is', null);
  if (after) query = query.where('l.id', '>', after.id);
  return pageOf((await query.execute()).map(toLimitation), limit);
}

export async function insertLimitation(
  tx: Scoped,
  organisationId: string,
  record: LimitationRecord,
  { by, at }: { readonly by: string; readonly at: Date },
): Promise<void> {
  await tx
    .insertInto('limitation')
    .values({
      organisation_id: organisationId,
      id: record.id,
      visit_id: record.visitId,
      vessel_id: record.vesselId,
      zone: record.zone,
      item_id: record.itemId,
      what: record.what,
      reason: record.reason,
      words: record.words,
      trade: record.trade,
      imposed_on: record.imposedOn,
      recorded_by: by,
      created_at: at,
    })
    .execute();
}

export async function insertLimitationAnswer(
  tx: Scoped,
  organisationId: string,
  { vesselId }: LimitationRecord,
  answer: LimitationAnswer & { readonly visitId: string; readonly recordedBy: string; readonly recordedAt: string },
): Promise<void> {
  await tx
    .insertInto('limitation_answer')
    .values({
      organisation_id: organisationId,
      id: answer.id,
      limitation_id: answer.limitationId,
      visit_id: answer.visitId,
      vessel_id: vesselId,
      answer: answer.answer,
      reason: answer.reason,
      words: answer.words,
      on_day: answer.on,
      recorded_by: answer.recordedBy,
      recorded_at: answer.recordedAt,
    })
    .execute();
}

export async function loadLimitationAnswers(tx: Scoped, visitId: string): Promise<LimitationAnswer[]> {
  const rows = await tx
    .selectFrom('limitation_answer')
    .selectAll()
    .where('visit_id', '=', visitId)
    .orderBy('id')
    .execute();
  return rows.map(({ id, limitation_id, answer, reason, words, on_day }) => ({
    ...{ id, reason, words },
    answer: answer as LimitationAnswer['answer'],
    limitationId: limitation_id,
    on: on_day,
  }));
}

/** `liftedOn`: `null` where it stays. The version moves in either case. */
export async function touchLimitation(
  tx: Scoped,
  { id, version }: LimitationRecord,
  liftedOn: string | null,
): Promise<void> {
  await tx
    .updateTable('limitation')
    .set({ version: version + 1, ...(liftedOn !== null && { lifted_on: liftedOn }) })
    .where('id', '=', id)
    .execute();
}

function toLimitation(row: Row): LimitationRecord {
  const { id, zone, what, reason, words, trade, version } = row;
  return {
    ...{ id, zone, what, reason, words, trade, version },
    visitId: row.visit_id,
    vesselId: row.vessel_id,
    vesselName: row.vessel_name,
    itemId: row.item_id,
    imposedOn: row.imposed_on,
    liftedOn: row.lifted_on,
  };
}
