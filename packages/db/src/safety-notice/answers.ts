/** Answers are only ever added. */
import type { Scoped } from '../scope.ts';
import { type AnswerRecord, toAnswerColumns, toAnswerRecord } from './answer-record.ts';

/** Every answer to the notice, struck-out ones too, in the order in which we learned them; only of `itemIds`. */
export async function loadAnswers(tx: Scoped, noticeId: string, itemIds: readonly string[]): Promise<AnswerRecord[]> {
  if (itemIds.length === 0) return [];
  const rows = await tx
    .selectFrom('notice_answer')
    .selectAll()
    .where('notice_id', '=', noticeId)
    .where('item_id', 'in', [...itemIds])
    .orderBy('id')
    .execute();
  return rows.map(toAnswerRecord);
}

export async function loadAnswersOfItems(tx: Scoped, itemIds: readonly string[]): Promise<AnswerRecord[]> {
  const rows = await tx
    .selectFrom('notice_answer')
    .selectAll()
    .where('item_id', 'in', [...itemIds])
    .orderBy('id')
    .execute();
  return rows.map(toAnswerRecord);
}

export async function insertAnswer(tx: Scoped, organisationId: string, record: AnswerRecord): Promise<void> {
  await tx.insertInto('notice_answer').values(toAnswerColumns(organisationId, record)).execute();
}
