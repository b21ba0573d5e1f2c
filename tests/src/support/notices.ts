/** Short ways to an invented maker's notice and its answers, through the actions and nothing else. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { answerNotice, type NoticeAnswered } from '@garboard/actions/safety-notice/answer-notice.ts';
import type { AnswerInput } from '@garboard/actions/safety-notice/answered-item.ts';
import { enterNotice } from '@garboard/actions/safety-notice/enter-notice.ts';
import type { NoticeInput } from '@garboard/actions/safety-notice/notice-input.ts';
import type { ItemParticulars } from '@garboard/db/item/item-record.ts';
import type { NoticeRecord } from '@garboard/db/safety-notice/notice-record.ts';
import { accepted } from './organisation.ts';

/** Hoses AB1200 to AB1399 of an invented maker, to be replaced by the end of the year. */
export const HOSE_NOTICE: NoticeInput = {
  title: 'Hoses that may come off the tail',
  publisher: 'Quillmere Hose Works',
  reference: 'QH-2026-09',
  issuedOn: '2026-09-03',
  address: null,
  document: 'Letter to owners, 3 September 2026',
  kinds: ['gas_hose'],
  makers: ['Quillmere Hose Works'],
  models: [],
  serials: [{ from: 'AB1200', to: 'AB1399' }],
  manufactured: null,
  hazard: 'gas can escape below',
  action: { kind: 'replace', words: 'Have the hose replaced by a gas engineer' },
  deadline: { kind: 'on', on: '2026-12-31' },
  weight: 'maker',
};

export async function aNotice(ctx: ActionContext, more: Partial<NoticeInput> = {}): Promise<NoticeRecord> {
  return accepted(await enterNotice(ctx, { ...HOSE_NOTICE, ...more }));
}

export const hosePlate = (serialNumber: string | null): Partial<ItemParticulars> => ({
  maker: 'QUILLMERE HOSE WORKS',
  serialNumber,
});

/** Done on 1 October by a gas engineer, unless told otherwise. */
export function done(more: Partial<AnswerInput> = {}): AnswerInput {
  return {
    answer: 'done',
    on: '2026-10-01',
    doneBy: { name: 'Ines Vale', capacity: 'gas_engineer' },
    evidence: 'certificate',
    reference: 'W-118',
    note: null,
    until: null,
    serialRead: null,
    replaced: false,
    corrects: null,
    ...more,
  };
}

export async function answered(
  ctx: ActionContext,
  noticeId: string,
  itemId: string,
  more: Partial<AnswerInput> = {},
): Promise<NoticeAnswered> {
  return accepted(await answerNotice(ctx, { noticeId, itemId, answer: done(more) }));
}
