/** Specialists who must look closer, until one has. */
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { ReferralTable } from './tables.ts';
import type { ReferralRecord, ReferralResult } from './visit-record.ts';

type Row = Selectable<ReferralTable> & { vessel_name: string };

function referrals(tx: Scoped) {
  return tx
    .selectFrom('referral as r')
    .innerJoin('vessel as v', (join) =>
      join.onRef('v.organisation_id', '=', 'r.organisation_id').onRef('v.id', '=', 'r.vessel_id'),
    )
    .selectAll('r')
    .select('v.name as vessel_name');
}

export async function loadReferral(tx: Scoped, id: string): Promise<ReferralRecord | null> {
  const row = await referrals(tx).where('r.id', '=', id).executeTakeFirst();
  return row ? toReferral(row) : null;
}

/** Those that wait for a specialist. */
export async function loadOpenReferrals(tx: Scoped, vesselId: string): Promise<ReferralRecord[]> {
  const rows = await referrals(tx)
    .where('r.vessel_id', '=', vesselId)
    .where('r.result', 'is', null)
    .orderBy('r.id')
    .execute();
  return rows.map(toReferral);
}

export async function loadReferralsOfVisit(tx: Scoped, visitId: string): Promise<ReferralRecord[]> {
  const rows = await referrals(tx).where('r.visit_id', '=', visitId).orderBy('r.id').execute();
  return rows.map(toReferral);
}

type Filter = { readonly vesselId?: string; readonly open?: boolean };

export async function listReferrals(
  tx: Scoped,
  filter: Filter,
  limit: number,
  after?: { id: string },
): Promise<Page<ReferralRecord>> {
  let query = referrals(tx)
    .orderBy('r.id')
    .limit(sql.lit(limit + 1));
  if (filter.vesselId) query = query.where('r.vessel_id', '=', filter.vesselId);
  if (filter.open !== undefined) query = query.where('r.result', filter.open ? 'is' : 'is not', null);
  if (after) query = query.where('r.id', '>', after.id);
  return pageOf((await query.execute()).map(toReferral), limit);
}

export async function insertReferral(
  tx: Scoped,
  organisationId: string,
  record: ReferralRecord,
  { by, at }: { readonly by: string; readonly at: Date },
): Promise<void> {
  await tx
    .insertInto('referral')
    .values({
      organisation_id: organisationId,
      id: record.id,
      visit_id: record.visitId,
      vessel_id: record.vesselId,
      zone: record.zone,
      item_id: record.itemId,
      finding_id: record.findingId,
      trade: record.trade,
      what: record.what,
      due_on: record.dueOn,
      responsible: record.responsible,
      asked_on: record.askedOn,
      recorded_by: by,
      created_at: at,
    })
    .execute();
}

/** `false` when somebody was faster. */
export async function saveResult(
  tx: Scoped,
  { id, version }: ReferralRecord,
  result: ReferralResult,
): Promise<boolean> {
  const { numUpdatedRows } = await tx
    .updateTable('referral')
    .set({ result: JSON.stringify(result), version: version + 1 })
    .where('id', '=', id)
    .where('version', '=', version)
    .executeTakeFirstOrThrow();
  return numUpdatedRows === 1n;
}

function toReferral(row: Row): ReferralRecord {
  const { id, zone, trade, what, responsible, result, version } = row;
  return {
    ...{ id, zone, trade, what, responsible, result, version },
    visitId: row.visit_id,
    vesselId: row.vessel_id,
    vesselName: row.vessel_name,
    itemId: row.item_id,
    findingId: row.finding_id,
    dueOn: row.due_on,
    askedOn: row.asked_on,
  };
}
