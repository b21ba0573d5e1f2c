/** Withdraws a notice: it asks nothing more, and what was owed and answered until then stays known. */

import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import type { NoticeRecord } from '@garboard/db/safety-notice/notice-record.ts';
import { loadNotice, markWithdrawn } from '@garboard/db/safety-notice/notices.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { holdFleet, matchFleet } from './match-fleet.ts';

export type NoticeToWithdraw = {
  readonly noticeId: string;
  readonly expectedVersion: number;
  readonly reason: string;
};

export function withdrawNotice(
  ctx: ActionContext,
  { noticeId, expectedVersion, reason }: NoticeToWithdraw,
): Promise<Written<NoticeRecord, 'not_found' | 'stale' | 'conflict'>> {
  return write(ctx, 'keep_register', async (write) => {
    if (ctx.vesselIds !== 'all') return refused({ kind: 'forbidden' });
    if (!(await loadNotice(write.tx, noticeId))) return refused({ kind: 'not_found' });
    await holdFleet(write);
    const before = await loadNotice(write.tx, noticeId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (before.withdrawn) return refused({ kind: 'conflict', detail: 'It is withdrawn already.' });
    const { timeZone } = await loadOrganisation(write.tx);
    const on = formatDay(dayInZone(ctx.now, timeZone));
    const withdrawn = { on, reason, recordedAt: ctx.now.toISOString(), recordedBy: actorText(ctx.actor) };
    await markWithdrawn(write.tx, noticeId, withdrawn);
    const after = { ...before, withdrawn, version: 2 };
    await audit(write, { verb: 'withdraw_notice', subject: 'safety_notice', subjectId: noticeId, before, after });
    await matchFleet(write, after);
    return done(after);
  });
}
