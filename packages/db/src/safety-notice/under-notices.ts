/** What the notices of an organisation say of some items: read with their facts, for the rules. */
import type { UnderNotices } from '@garboard/domain/safety-notice/judge-item.ts';
import type { ItemRecord } from '../item/item-record.ts';
import type { Scoped } from '../scope.ts';
import { toAnswer } from './answer-record.ts';
import { loadAnswersOfItems } from './answers.ts';
import { toNotice } from './notice-record.ts';
import { loadNoticesOfKinds } from './notices.ts';
import { loadFormerPlates, plateHistory } from './plates.ts';

/** `undefined` for an item whose kind no notice names: most fleets have few notices, and pay one statement. */
export async function loadUnderNotices(
  tx: Scoped,
  items: readonly ItemRecord[],
): Promise<(item: ItemRecord) => UnderNotices | undefined> {
  const kinds = [...new Set(items.map(({ kind }) => kind))].sort();
  const notices = (await loadNoticesOfKinds(tx, kinds)).map(toNotice);
  const named = items.filter(({ kind }) => notices.some((notice) => notice.kinds.some((each) => each === kind)));
  if (named.length === 0) return () => undefined;
  const ids = named.map(({ id }) => id);
  const former = await loadFormerPlates(tx, ids);
  const answers = Map.groupBy(await loadAnswersOfItems(tx, ids), ({ noticeId, itemId }) => `${noticeId} ${itemId}`);
  return (item) => {
    const bearing = notices.filter(({ kinds: all }) => all.some((each) => each === item.kind));
    if (bearing.length === 0) return undefined;
    return {
      plate: plateHistory(item, former),
      notices: bearing.map((notice) => ({
        notice,
        answers: (answers.get(`${notice.id} ${item.id}`) ?? []).map(toAnswer),
      })),
    };
  };
}
