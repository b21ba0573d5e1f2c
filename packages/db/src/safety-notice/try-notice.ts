/** What a notice would hit if it were entered: nothing is written. */
import type { SafetyNotice } from '@garboard/domain/safety-notice/notice.ts';
import type { Scoped } from '../scope.ts';
import { type Sifted, sift } from './candidates.ts';
import { type NoticeItem, readNoticeItems } from './notice-items.ts';

export type NoticeTried = {
  /** Everything that it covers or may cover. */
  readonly hits: readonly NoticeItem[];
  /** Of its kinds, but not covered. */
  readonly others: number;
  /** The first of them that the plate rules out, with the reason. */
  readonly ruledOut: readonly (Sifted & { readonly ruledOut: readonly string[] })[];
};

export async function tryNotice(tx: Scoped, notice: SafetyNotice, mostOthers: number): Promise<NoticeTried> {
  const hits = await readNoticeItems(tx, { notice, cut: {} });
  const ruledOut: NoticeTried['ruledOut'][number][] = [];
  let all = 0;
  for await (const { ruledOut: because, ...thing } of sift(tx, notice)) {
    all += 1;
    if (because && ruledOut.length < mostOthers) ruledOut.push({ ...thing, ruledOut: because });
  }
  return { hits, others: all - hits.length, ruledOut };
}
