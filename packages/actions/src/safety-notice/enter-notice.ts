/** Enters a safety notice; what it bears on across the fleet owes an answer when this returns. For those who may see the whole fleet. */
import type { NoticeRecord } from '@garboard/db/safety-notice/notice-record.ts';
import { insertNotice } from '@garboard/db/safety-notice/notices.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { holdFleet, matchFleet } from './match-fleet.ts';
import { type NoticeInput, noticeFaults, unstored } from './notice-input.ts';

export function enterNotice(ctx: ActionContext, input: NoticeInput): Promise<Written<NoticeRecord, 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    if (ctx.vesselIds !== 'all') return refused({ kind: 'forbidden' });
    const errors = noticeFaults(input, ctx.now);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const record = { ...unstored(input, ctx.now), id: newId(ctx.now), recordedBy: actorText(ctx.actor) };
    await holdFleet(write);
    await insertNotice(write.tx, ctx.organisationId, record);
    await audit(write, {
      verb: 'enter_notice',
      subject: 'safety_notice',
      subjectId: record.id,
      before: null,
      after: record,
    });
    await matchFleet(write, record);
    return done(record);
  });
}
