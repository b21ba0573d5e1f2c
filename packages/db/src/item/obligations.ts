/** Stored obligations: read with an item, replaced when facts change. */
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { type Insertable, type Selectable, sql } from 'kysely';
import type { Scoped } from '../scope.ts';
import { NO_DATE, toObligation } from './obligation-record.ts';
import type { ObligationTable } from './tables.ts';

export type ObligationRow = Selectable<ObligationTable>;
export type ObligationKey = Pick<ObligationRow, 'item_id' | 'rule_id' | 'duty'>;

/** By the day on which they are overdue; those without a date last. */
export async function listObligations(tx: Scoped, itemId: string): Promise<Obligation[]> {
  const rows = await tx
    .selectFrom('obligation')
    .selectAll()
    .where('item_id', '=', itemId)
    .orderBy('overdue_after')
    .orderBy('rule_id')
    .orderBy('duty')
    .execute();
  return rows.map(toObligation);
}

/** By when a rule wants something done about the thing, the first day first, where law or a certificate's terms want it. */
export async function loadBindingDays(tx: Scoped, itemId: string, ruleId: string): Promise<string[]> {
  const rows = await tx
    .selectFrom('obligation')
    .select('overdue_after')
    .where('item_id', '=', itemId)
    .where('rule_id', '=', ruleId)
    .where('weight', 'in', ['law', 'certificate'])
    .where('overdue_after', '<', NO_DATE)
    .orderBy('overdue_after')
    .execute();
  return rows.map(({ overdue_after }) => overdue_after);
}

export function loadObligationRows(tx: Scoped, itemIds: readonly string[]): Promise<ObligationRow[]> {
  return tx
    .selectFrom('obligation')
    .selectAll()
    .where('item_id', 'in', [...itemIds])
    .execute();
}

export async function deleteObligations(tx: Scoped, keys: readonly ObligationKey[]): Promise<void> {
  if (keys.length === 0) return;
  const values = sql.join(keys.map((key) => sql`(${key.item_id}::uuid, ${key.rule_id}, ${key.duty})`));
  await tx.deleteFrom('obligation').where(sql<boolean>`(item_id, rule_id, duty) in (${values})`).execute();
}

/** PostgreSQL takes 65,535 parameters a statement; a row has sixteen. */
const ROWS_A_STATEMENT = 2_000;

export async function insertObligations(tx: Scoped, rows: readonly Insertable<ObligationTable>[]): Promise<void> {
  for (let from = 0; from < rows.length; from += ROWS_A_STATEMENT) {
    await tx
      .insertInto('obligation')
      .values(rows.slice(from, from + ROWS_A_STATEMENT))
      .execute();
  }
}
