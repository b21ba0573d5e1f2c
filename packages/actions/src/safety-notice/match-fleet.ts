/** Works out anew what a notice bears on, boat after boat; cost grows with what it may bear on, not with the fleet's facts. */
import { candidates } from '@garboard/db/safety-notice/candidates.ts';
import { type NoticeRecord, toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { lockFleet } from '@garboard/db/vessel/vessels.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';
import type { Write } from '../write.ts';

export async function matchFleet({ tx, ctx: { organisationId } }: Write, record: NoticeRecord): Promise<void> {
  const byVessel = new Map<string, string[]>();
  for await (const { vesselId, itemId } of candidates(tx, toNotice(record))) {
    const hers = byVessel.get(vesselId);
    if (hers) hers.push(itemId);
    else byVessel.set(vesselId, [itemId]);
  }
  for (const [vesselId, itemIds] of byVessel) await refreshObligations(tx, organisationId, vesselId, itemIds);
}

/** From here to the transaction's end nothing that a notice could bear on changes, and none is entered. */
export function holdFleet({ tx, ctx }: Write): Promise<void> {
  return lockFleet(tx, ctx.organisationId);
}
