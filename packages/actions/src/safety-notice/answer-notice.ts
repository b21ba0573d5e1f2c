/** Answers a notice for one thing. What the answer says of the thing is recorded with it, or nothing is. */
import { loadItem } from '@garboard/db/item/items.ts';
import { type ItemWithHistory, loadItemHistories } from '@garboard/db/item/load-histories.ts';
import { type AnswerRecord, toAnswer } from '@garboard/db/safety-notice/answer-record.ts';
import { insertAnswer, loadAnswers } from '@garboard/db/safety-notice/answers.ts';
import { dayOf, dayOrNull, type NoticeRecord, toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { loadNotice } from '@garboard/db/safety-notice/notices.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { unitAboard } from '@garboard/domain/item/unit-aboard.ts';
import { answerProblems, whyNotAsked } from '@garboard/domain/safety-notice/answer-problems.ts';
import { judgeItem, type NoticeStanding } from '@garboard/domain/safety-notice/judge-item.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { type AnswerInput, recordReplacement, replacementFaults, writeSerial } from './answered-item.ts';

export type NewAnswer = { readonly noticeId: string; readonly itemId: string; readonly answer: AnswerInput };
export type NoticeAnswered = {
  readonly answer: AnswerRecord;
  /** The day it was at the vessel's place. */
  readonly asOf: string;
  /** The item's obligations as they stand now. */
  readonly obligations: readonly Obligation[];
};

export function answerNotice(
  ctx: ActionContext,
  { noticeId, itemId, answer }: NewAnswer,
): Promise<Written<NoticeAnswered, 'not_found' | 'invalid' | 'conflict'>> {
  return write(ctx, 'record_facts', async (write) => {
    const ground = await lockGround(write, noticeId, itemId);
    if (!ground) return refused({ kind: 'not_found' });
    if (ground.notice.withdrawn) return refused({ kind: 'conflict', detail: 'The notice is withdrawn.' });
    const standing = standingOf(ground);
    const why = whyNotAsked(answer, standing);
    if (why !== null) return refused({ kind: 'conflict', detail: why });
    const errors = faultsOf(write, answer, { ...ground, standing });
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    return done(await record(write, answer, ground));
  });
}

type Judged = Ground & { readonly standing: NoticeStanding | null };
type Ground = ItemWithHistory & {
  readonly notice: NoticeRecord;
  readonly given: readonly AnswerRecord[];
  readonly today: Day;
};

/** Read once the vessel's row is held: a withdrawal or another answer may have come in between. */
async function lockGround({ tx, ctx }: Write, noticeId: string, itemId: string): Promise<Ground | null> {
  const found = await loadItem(tx, itemId);
  const vessel = found && (await lockVessel(tx, found.vesselId));
  const notice = vessel && (await loadNotice(tx, noticeId));
  const [loaded] = vessel ? await loadItemHistories(tx, vessel.id, [itemId]) : [];
  if (!notice || !loaded) return null;
  const today = dayInZone(ctx.now, vessel.timeZone);
  return { ...loaded, notice, given: await loadAnswers(tx, noticeId, [itemId]), today };
}

function faultsOf({ ctx }: Write, answer: AnswerInput, ground: Judged): readonly Fault[] {
  const { notice, given, standing, today } = ground;
  const errors = answerProblems(
    { ...answer, on: dayOf(answer.on), until: dayOrNull(answer.until) },
    { notice: toNotice(notice), answers: given.map(toAnswer), standing, today },
  );
  return errors.length === 0 && answer.replaced ? replacementFaults(ctx, ground, answer) : errors;
}

/** `null`: it is not aboard, or of no kind that a notice names. */
function standingOf({ notice, given, history }: Ground): NoticeStanding | null {
  const { kind, facts, underNotices } = history;
  const unit = unitAboard(facts);
  if (unit.kind !== 'aboard' || !underNotices) return null;
  return judgeItem(toNotice(notice), given.map(toAnswer), underNotices.plate, { kind, facts: unit.facts }, {});
}

async function record(write: Write, input: AnswerInput, ground: Ground): Promise<NoticeAnswered> {
  const { tx, ctx } = write;
  const { notice, item, today } = ground;
  const written = await writeSerial(write, item, input);
  if (input.replaced) await recordReplacement(write, ground, input);
  const answer: AnswerRecord = {
    ...input,
    itemId: item.id,
    id: newId(ctx.now),
    noticeId: notice.id,
    vesselId: item.vesselId,
    serialThen: written.serialNumber,
    recordedAt: ctx.now.toISOString(),
    recordedBy: actorText(ctx.actor),
  };
  await insertAnswer(tx, ctx.organisationId, answer);
  await audit(write, {
    verb: 'answer_notice',
    subject: 'notice_answer',
    subjectId: answer.id,
    before: null,
    after: answer,
  });
  const { obligations } = await refreshObligations(tx, ctx.organisationId, item.vesselId, [item.id]);
  return { answer, asOf: formatDay(today), obligations: obligations.get(item.id) ?? [] };
}
