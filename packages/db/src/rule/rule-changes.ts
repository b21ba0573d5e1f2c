/** What a version of an own rule does to what is stored, and how far that has been worked through. */
import type { OwnRuleTouch } from '@garboard/domain/rule/own-rule-touch.ts';
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import { type Selectable, sql } from 'kysely';
import type { Scoped } from '../scope.ts';
import type { RuleChangeTable } from './tables.ts';

export type RuleChangeCursor = { readonly vesselId: string; readonly itemId: string | null };

export type RuleChangeRecord = {
  readonly id: string;
  readonly ruleId: string;
  readonly number: number;
  readonly touch: OwnRuleTouch;
  readonly cursor: RuleChangeCursor | null;
  /** Counted when it began. */
  readonly itemsTotal: number;
  readonly itemsDone: number;
  readonly obligationsChanged: number;
  readonly begunAt: string;
  readonly finishedAt: string | null;
};

export async function loadRuleChange(tx: Scoped, id: string): Promise<RuleChangeRecord | null> {
  const row = await tx.selectFrom('rule_change').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toRecord(row) : null;
}

/** The first that is not finished, held until the transaction ends: two runners take turns. */
export async function lockUnfinishedChange(tx: Scoped): Promise<RuleChangeRecord | null> {
  const row = await tx
    .selectFrom('rule_change')
    .selectAll()
    .where('finished_at', 'is', null)
    .orderBy('id')
    .limit(sql.lit(1))
    .forUpdate()
    .executeTakeFirst();
  return row ? toRecord(row) : null;
}

type Begun = Pick<RuleChangeRecord, 'id' | 'ruleId' | 'number' | 'touch' | 'begunAt'>;

export async function insertRuleChange(tx: Scoped, organisationId: string, change: Begun): Promise<void> {
  const { kinds, everyVessel, schemes, vesselIds } = change.touch;
  await tx
    .insertInto('rule_change')
    .values({
      organisation_id: organisationId,
      id: change.id,
      rule_id: change.ruleId,
      number: change.number,
      kinds: [...kinds],
      every_vessel: everyVessel,
      schemes: [...schemes],
      vessel_ids: [...vesselIds],
      cursor_vessel_id: null,
      cursor_item_id: null,
      items_total: await countTouched(tx, change.touch),
      items_done: 0,
      obligations_changed: 0,
      begun_at: change.begunAt,
      finished_at: null,
    })
    .execute();
}

async function countTouched(tx: Scoped, { kinds, everyVessel, schemes, vesselIds }: OwnRuleTouch): Promise<number> {
  const { rows } = await sql<{ n: number }>`
    select count(*)::integer as n from item i join vessel v using (organisation_id)
    where v.id = i.vessel_id and i.kind = any(${[...kinds]}::text[])
      and (${everyVessel}::boolean or v.schemes && ${[...schemes]}::text[] or v.id = any(${[...vesselIds]}::uuid[]))`.execute(
    tx,
  );
  return rows[0]?.n ?? 0;
}

/** Adds what a batch did to what was done. */
export async function advanceRuleChange(
  tx: Scoped,
  id: string,
  cursor: RuleChangeCursor,
  done: { readonly items: number; readonly obligations: number },
): Promise<void> {
  await tx
    .updateTable('rule_change')
    .set((eb) => ({
      cursor_vessel_id: cursor.vesselId,
      cursor_item_id: cursor.itemId,
      items_done: eb('items_done', '+', done.items),
      obligations_changed: eb('obligations_changed', '+', done.obligations),
    }))
    .where('id', '=', id)
    .execute();
}

export async function finishRuleChange(tx: Scoped, id: string): Promise<void> {
  await tx.updateTable('rule_change').set({ finished_at: sql<Date>`now()` }).where('id', '=', id).execute();
}

/**
 * The next vessels in the order of their ids, the cursor's own where she is not yet done. Also those without such
 * things: somebody may be putting one aboard just now, and only her lock tells.
 */
export async function nextVesselIds(
  tx: Scoped,
  { cursor, touch }: RuleChangeRecord,
  limit: number,
): Promise<readonly string[]> {
  let query = tx.selectFrom('vessel').select('id').orderBy('id').limit(sql.lit(limit));
  if (cursor) query = query.where('id', cursor.itemId === null ? '>' : '>=', cursor.vesselId);
  if (!touch.everyVessel && touch.schemes.length === 0)
    query = query.where(sql<boolean>`id = any(${[...touch.vesselIds]}::uuid[])`);
  return (await query.execute()).map(({ id }) => id);
}

/** Her things of those kinds after `after`, in the order of their ids. */
export async function nextItemIds(
  tx: Scoped,
  vesselId: string,
  kinds: readonly string[],
  limit: number,
  after: string | null,
): Promise<readonly string[]> {
  let query = tx
    .selectFrom('item')
    .select('id')
    .where('vessel_id', '=', vesselId)
    .where(sql<boolean>`kind = any(${[...kinds]}::text[])`)
    .orderBy('id')
    .limit(sql.lit(limit));
  if (after !== null) query = query.where('id', '>', after);
  return (await query.execute()).map(({ id }) => id);
}

function toRecord(row: Selectable<RuleChangeTable>): RuleChangeRecord {
  return {
    id: row.id,
    ruleId: row.rule_id,
    number: row.number,
    touch: {
      kinds: row.kinds as OwnRuleTouch['kinds'],
      everyVessel: row.every_vessel,
      schemes: row.schemes as SchemeId[],
      vesselIds: row.vessel_ids,
    },
    cursor: row.cursor_vessel_id === null ? null : { vesselId: row.cursor_vessel_id, itemId: row.cursor_item_id },
    itemsTotal: row.items_total,
    itemsDone: row.items_done,
    obligationsChanged: row.obligations_changed,
    begunAt: row.begun_at.toISOString(),
    finishedAt: row.finished_at?.toISOString() ?? null,
  };
}
