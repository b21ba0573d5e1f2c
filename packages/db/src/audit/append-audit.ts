/**
 * Audit rows are noted while a transaction works and appended to the chain as its last statements: writers of
 * one organisation wait for each other only from there to the commit, and in no other order than this one.
 */
import type { Scoped } from '../scope.ts';
import type { AuditRow, ChainedRow } from './audit-row.ts';
import { chain, type Head, NO_HASH } from './chain.ts';

type Noted = { readonly organisationId: string; readonly row: AuditRow };

const notes = new WeakMap<Scoped, Noted[]>();

/** Called by whatever opens a transaction in a scope; it also appends before it commits. */
export function keepNotes(tx: Scoped): void {
  notes.set(tx, []);
}

/** Throws in a transaction that nobody will append for: a change without its line must not commit. */
export function noteAudit(tx: Scoped, organisationId: string, row: AuditRow): void {
  const noted = notes.get(tx);
  if (!noted) throw new Error('an audit row outside a transaction in a scope');
  noted.push({ organisationId, row });
}

/** Appends what was noted since the last call; the scope must still be the organisation of the notes. */
export async function appendNoted(tx: Scoped): Promise<void> {
  const noted = notes.get(tx)?.splice(0) ?? [];
  const byOrganisation = Map.groupBy(noted, ({ organisationId }) => organisationId);
  for (const [organisationId, some] of byOrganisation) {
    const head = await lockHead(tx, organisationId);
    const rows = chain(
      organisationId,
      head,
      some.map(({ row }) => row),
    );
    await insertRows(tx, organisationId, rows);
  }
}

async function lockHead(tx: Scoped, organisationId: string): Promise<Head> {
  const found = await selectHead(tx, organisationId);
  if (found) return found;
  await tx
    .insertInto('audit_head')
    .values({ organisation_id: organisationId, sequence: 0, hash: Buffer.from(NO_HASH, 'hex') })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
  const made = await selectHead(tx, organisationId);
  if (!made) throw new Error('the head of the audit is not in scope');
  return made;
}

async function selectHead(tx: Scoped, organisationId: string): Promise<Head | null> {
  const row = await tx
    .selectFrom('audit_head')
    .select(['sequence', 'hash'])
    .where('organisation_id', '=', organisationId)
    .forUpdate()
    .executeTakeFirst();
  return row ? { sequence: row.sequence, hash: row.hash.toString('hex') } : null;
}

/** PostgreSQL takes 65,535 parameters a statement; a row has sixteen. */
const ROWS_A_STATEMENT = 2_000;

async function insertRows(tx: Scoped, organisationId: string, rows: readonly ChainedRow[]): Promise<void> {
  for (let from = 0; from < rows.length; from += ROWS_A_STATEMENT) {
    const some = rows.slice(from, from + ROWS_A_STATEMENT);
    const last = some.at(-1);
    if (!last) return;
    await tx
      .with('moved', (db) =>
        db
          .updateTable('audit_head')
          .set({ sequence: last.sequence, hash: Buffer.from(last.hash, 'hex') })
          .where('organisation_id', '=', organisationId),
      )
      .insertInto('audit')
      .values(some.map(toColumns))
      .execute();
  }
}

const toColumns = (row: ChainedRow) => ({
  organisation_id: row.organisationId,
  id: row.id,
  at: row.at,
  actor: row.actor,
  credential: row.credential,
  role: row.role,
  request_id: row.requestId,
  verb: row.verb,
  subject: row.subject,
  subject_id: row.subjectId,
  before: json(row.before),
  after: json(row.after),
  sequence: row.sequence,
  previous: Buffer.from(row.previous, 'hex'),
  hash: Buffer.from(row.hash, 'hex'),
});

const json = (value: unknown) => (value === null ? null : JSON.stringify(value));
