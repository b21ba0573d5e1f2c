/** Ends an organisation's own figure: from today on the published one counts again, and what counted before stays known. */
import type { OverrideRecord } from '@garboard/db/rule/override-record.ts';
import { loadOverride, markEnded } from '@garboard/db/rule/overrides.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { refreshTouched } from './refresh-touched.ts';

export type OverrideToEnd = {
  readonly overrideId: string;
  readonly expectedVersion: number;
  readonly reason: string;
};

export function endOverride(
  ctx: ActionContext,
  { overrideId, expectedVersion, reason }: OverrideToEnd,
): Promise<Written<OverrideRecord, 'not_found' | 'stale' | 'conflict'>> {
  return write(ctx, 'keep_register', async (write) => {
    const locked = await lockOverride(write, overrideId);
    if (!locked) return refused({ kind: 'not_found' });
    const { before, today } = locked;
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (before.ended) return refused({ kind: 'conflict', detail: 'It has ended already.' });
    const ended = { on: today, reason, recordedAt: ctx.now.toISOString(), recordedBy: actorText(ctx.actor) };
    await markEnded(write.tx, overrideId, ended);
    const after = { ...before, ended, version: 2 };
    audit(write, { verb: 'end_override', subject: 'override', subjectId: overrideId, before, after });
    await refreshTouched(write.tx, ctx.organisationId, after);
    return done(after);
  });
}

/** Read again once her row is held: somebody may have ended it in between. */
async function lockOverride({ tx, ctx }: Write, overrideId: string) {
  const found = await loadOverride(tx, overrideId);
  const vessel = found && (await lockVessel(tx, found.vesselId));
  const before = vessel && (await loadOverride(tx, overrideId));
  return vessel && before ? { before, today: formatDay(dayInZone(ctx.now, vessel.timeZone)) } : null;
}
