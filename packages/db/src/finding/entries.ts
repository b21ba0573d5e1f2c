/** A finding's entries: only ever added. */
import type { Entry } from '@garboard/domain/finding/entry.ts';
import { type Selectable, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { FindingEntryTable } from './tables.ts';

type Of = { readonly organisationId: string; readonly findingId: string; readonly vesselId: string };

export async function insertEntry(
  tx: Scoped,
  { organisationId, findingId, vesselId }: Of,
  entry: Entry,
): Promise<void> {
  const { id, by, on, recordedAt, step, ...said } = entry;
  await tx
    .insertInto('finding_entry')
    .values({
      organisation_id: organisationId,
      id,
      finding_id: findingId,
      vessel_id: vesselId,
      visit_id: 'visitId' in said ? said.visitId : null,
      step,
      said: JSON.stringify(said),
      on_day: on,
      recorded_by: by,
      recorded_at: recordedAt,
    })
    .execute();
}

/** Of each of the vessel's findings, from the first to the last. */
export async function loadEntriesOfVessel(tx: Scoped, vesselId: string): Promise<Map<string, Entry[]>> {
  const rows = await tx
    .selectFrom('finding_entry')
    .selectAll()
    .where('vessel_id', '=', vesselId)
    .orderBy('id')
    .execute();
  const grouped = Map.groupBy(rows, ({ finding_id }) => finding_id);
  return new Map([...grouped].map(([id, some]) => [id, some.map(toEntry)]));
}

export async function listEntries(
  tx: Scoped,
  findingId: string,
  limit: number,
  after?: { id: string },
): Promise<Page<Entry>> {
  let query = tx
    .selectFrom('finding_entry')
    .selectAll()
    .where('finding_id', '=', findingId)
    .orderBy('id')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('id', '>', after.id);
  return pageOf((await query.execute()).map(toEntry), limit);
}

export function toEntry(row: Selectable<FindingEntryTable>): Entry {
  return {
    ...row.said,
    id: row.id,
    by: row.recorded_by,
    on: row.on_day,
    recordedAt: row.recorded_at.toISOString(),
    step: row.step,
  } as Entry;
}
