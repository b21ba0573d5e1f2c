/** What a request says of a notice, as the actions take it: what was not said is `null`. */
import type { NoticeInput } from '@garboard/actions/safety-notice/notice-input.ts';
import type { NewSafetyNotice } from '@garboard/contract/safety-notice/notice.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';

export function readNotice(asked: NewSafetyNotice): NoticeInput {
  return {
    ...asked,
    reference: asked.reference ?? null,
    address: asked.address ?? null,
    document: asked.document ?? null,
    // Whether each is in the catalogue is a rule of the action.
    kinds: asked.kinds as ItemKindId[],
    serials: asked.serials.map(({ from = null, to = null }) => ({ from, to })),
    manufactured: asked.manufactured
      ? { from: asked.manufactured.from ?? null, to: asked.manufactured.to ?? null }
      : null,
  };
}
