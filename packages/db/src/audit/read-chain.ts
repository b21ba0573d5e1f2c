/** The chain in its order, a batch at a time: for checking it and for handing it out. */
import { type Selectable, sql } from 'kysely';
import type { Database } from '../schema.ts';
import type { Scoped } from '../scope.ts';
import type { ChainedRow } from './audit-row.ts';

const BATCH = 1_000;

/** From the row after `after`; rows older than the chain have no place in it and are left out. */
export async function* readChain(tx: Scoped, organisationId: string, after = 0): AsyncGenerator<ChainedRow> {
  let last = after;
  for (;;) {
    const rows = await loadChained(tx, organisationId, last, BATCH);
    for (const row of rows) yield row;
    last = rows.at(-1)?.sequence ?? last;
    if (rows.length < BATCH) return;
  }
}

export async function loadChained(
  tx: Scoped,
  organisationId: string,
  after: number,
  limit: number,
): Promise<ChainedRow[]> {
  const rows = await tx
    .selectFrom('audit')
    .selectAll()
    .where('organisation_id', '=', organisationId)
    .where('sequence', '>', after)
    .orderBy('sequence')
    .limit(sql.lit(limit))
    .execute();
  return rows.map(toChained);
}

function toChained(row: Selectable<Database['audit']>): ChainedRow {
  const { sequence, previous, hash, credential, role } = row;
  if (sequence === null || previous === null || hash === null || credential === null || role === null)
    throw new Error(`audit row ${row.id} has no place in the chain`);
  return {
    organisationId: row.organisation_id,
    id: row.id,
    at: row.at.toISOString(),
    actor: row.actor,
    credential,
    role,
    requestId: row.request_id,
    verb: row.verb,
    subject: row.subject,
    subjectId: row.subject_id,
    before: row.before,
    after: row.after,
    sequence,
    previous: previous.toString('hex'),
    hash: hash.toString('hex'),
  };
}
