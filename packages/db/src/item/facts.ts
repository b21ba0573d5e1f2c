/** Facts are only ever added. */
import { sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { type FactRecord, toFactColumns, toFactRecord } from './fact-record.ts';

export type ListedFact = FactRecord & { readonly struckOutBy: string | null };

/** In the order in which we learned them; struck-out ones stay, and say by which correction. */
export async function listFacts(tx: Scoped, itemId: string, limit: number, after?: string): Promise<Page<ListedFact>> {
  let query = tx
    .selectFrom('fact')
    .leftJoin('fact as correction', (join) =>
      join
        .onRef('correction.organisation_id', '=', 'fact.organisation_id')
        .onRef('correction.corrects', '=', 'fact.id'),
    )
    .selectAll('fact')
    .select('correction.id as struck_out_by')
    .where('fact.item_id', '=', itemId)
    .orderBy('fact.id')
    .limit(sql.lit(limit + 1));
  if (after) query = query.where('fact.id', '>', after);
  const rows = await query.execute();
  return pageOf(
    rows.map((row) => ({ ...toFactRecord(row), struckOutBy: row.struck_out_by })),
    limit,
  );
}

export async function insertFact(tx: Scoped, organisationId: string, fact: FactRecord): Promise<void> {
  await tx.insertInto('fact').values(toFactColumns(organisationId, fact)).execute();
}
