/** How every thing stands that a notice is about, worked out from what is on record. */
import { isKnown } from '@garboard/domain/item/facts-on-record.ts';
import type { Cut } from '@garboard/domain/item/unit-aboard.ts';
import type { SafetyNotice } from '@garboard/domain/safety-notice/notice.ts';
import { type ItemStanding, standingOfItem } from '@garboard/domain/safety-notice/standing-of-item.ts';
import type { ItemRecord } from '../item/item-record.ts';
import { loadItemHistories } from '../item/load-histories.ts';
import type { Scoped } from '../scope.ts';
import { type AnswerRecord, toAnswer } from './answer-record.ts';
import { loadAnswers } from './answers.ts';
import { candidates, type Sifted } from './candidates.ts';
import { loadFormerPlates, plateHistory } from './plates.ts';

export type NoticeItem = {
  readonly vessel: { readonly id: string; readonly name: string };
  readonly item: ItemRecord;
  readonly standing: ItemStanding;
  /** Every answer known then, struck-out ones too, in the order in which we learned them. */
  readonly answers: readonly AnswerRecord[];
};

export type NoticeItemsQuestion = {
  readonly notice: SafetyNotice;
  readonly cut: Cut;
  /** At most so many, and one more where more follow; without it all. */
  readonly limit?: number;
  readonly after?: string;
};

/** In the order of the items: what is still open and what is answered. */
export async function readNoticeItems(tx: Scoped, question: NoticeItemsQuestion): Promise<NoticeItem[]> {
  const { notice, cut, limit = Number.POSITIVE_INFINITY, after } = question;
  const found: NoticeItem[] = [];
  let group: Sifted[] = [];
  for await (const candidate of candidates(tx, notice, after)) {
    group.push(candidate);
    if (group.length < GROUP) continue;
    found.push(...(await judge(tx, notice, group, cut)));
    group = [];
    if (found.length > limit) break;
  }
  found.push(...(await judge(tx, notice, group, cut)));
  return found.slice(0, limit + 1);
}

const GROUP = 200;

async function judge(tx: Scoped, notice: SafetyNotice, group: readonly Sifted[], cut: Cut): Promise<NoticeItem[]> {
  if (group.length === 0) return [];
  const ids = group.map(({ itemId }) => itemId);
  const former = await loadFormerPlates(tx, ids);
  const answers = Map.groupBy(await loadAnswers(tx, notice.id, ids), ({ itemId }) => itemId);
  const found: NoticeItem[] = [];
  for (const [vesselId, hers] of Map.groupBy(group, (each) => each.vesselId)) {
    const name = hers[0]?.vesselName ?? '';
    const loaded = await loadItemHistories(
      tx,
      vesselId,
      hers.map(({ itemId }) => itemId),
    );
    for (const { item, history } of loaded.filter(({ item }) => isKnown(item.createdAt, cut.knownAt))) {
      const its = (answers.get(item.id) ?? []).filter(({ recordedAt }) => isKnown(recordedAt, cut.knownAt));
      const standing = standingOfItem(notice, its.map(toAnswer), plateHistory(item, former), history, cut);
      if (standing) found.push({ vessel: { id: vesselId, name }, item, standing, answers: its });
    }
  }
  return found.sort((a, b) => (a.item.id < b.item.id ? -1 : 1));
}
