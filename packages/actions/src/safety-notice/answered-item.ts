/** What an answer says of the thing itself, recorded on it: its serial number, and that another came in its place. */
import { type FactRecord, toFact } from '@garboard/db/item/fact-record.ts';
import { insertFact } from '@garboard/db/item/facts.ts';
import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import { touchItem } from '@garboard/db/item/items.ts';
import type { ItemWithHistory } from '@garboard/db/item/load-histories.ts';
import type { AnswerRecord } from '@garboard/db/safety-notice/answer-record.ts';
import { dayOf, type NoticeRecord } from '@garboard/db/safety-notice/notice-record.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import { factProblems } from '@garboard/domain/item/fact-problems.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { writeItem } from '../item/write-item.ts';
import { newId } from '../new-id.ts';
import type { Fault } from '../result.ts';
import type { Write } from '../write.ts';

export type AnswerInput = Omit<
  AnswerRecord,
  'id' | 'noticeId' | 'itemId' | 'vesselId' | 'serialThen' | 'recordedAt' | 'recordedBy'
>;

/** The thing, the notice, and the day it is at the vessel's place. */
type AnsweredItem = ItemWithHistory & { readonly notice: NoticeRecord; readonly today: Day };

/** The number read; where another came and nobody read its number, none: the old one's would speak for it. */
export async function writeSerial(write: Write, before: ItemRecord, answer: AnswerInput): Promise<ItemRecord> {
  const serialNumber = answer.serialRead ?? (answer.replaced ? null : before.serialNumber);
  if (serialNumber === before.serialNumber) return before;
  const after = await writeItem(write, before, { ...before, serialNumber }, answer.replaced ? dayOf(answer.on) : null);
  if (!after) throw new Error(`item ${before.id}: changed while its vessel was held`);
  await audit(write, { verb: 'change_item', subject: 'item', subjectId: before.id, before, after });
  return after;
}

/** Held against the item's history like every other fact. */
export function replacementFaults(ctx: ActionContext, ground: AnsweredItem, answer: AnswerInput): readonly Fault[] {
  return factProblems(toFact(replacement(ctx, ground, answer)), ground.history, ground.today).problems;
}

export async function recordReplacement(write: Write, ground: AnsweredItem, answer: AnswerInput): Promise<void> {
  const { tx, ctx } = write;
  const fact = replacement(ctx, ground, answer);
  await insertFact(tx, ctx.organisationId, fact);
  await touchItem(tx, ground.item.id);
  await audit(write, { verb: 'record_fact', subject: 'fact', subjectId: fact.id, before: null, after: fact });
}

function replacement(ctx: ActionContext, { notice, item }: AnsweredItem, answer: AnswerInput): FactRecord {
  return {
    id: newId(ctx.now),
    itemId: item.id,
    fact: 'replaced',
    on: answer.on,
    outcome: 'passed',
    test: null,
    doneBy: answer.doneBy,
    evidence: answer.evidence ?? 'unknown',
    until: null,
    reading: null,
    readOn: null,
    note: `Answers the notice “${notice.title}”`,
    corrects: null,
    recordedAt: ctx.now.toISOString(),
    recordedBy: actorText(ctx.actor),
  };
}
