/** A specialist must look closer: asked with a day, and ended by what they found. */
import { loadFinding } from '@garboard/db/finding/findings.ts';
import { insertReferral, loadReferral, saveResult } from '@garboard/db/survey-visit/referrals.ts';
import type { ReferralRecord, ReferralResult } from '@garboard/db/survey-visit/visit-record.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { particularFaults } from '../finding/particular-faults.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { lockOpenVisit } from './lock-visit.ts';
import { refreshVisitMatters } from './refresh-visit-matters.ts';

type Said = Pick<ReferralRecord, 'zone' | 'itemId' | 'findingId' | 'trade' | 'what' | 'dueOn' | 'responsible'>;
type Refusals = 'not_found' | 'stale' | 'conflict' | 'invalid';

export function refer(
  ctx: ActionContext,
  { visitId, said }: { readonly visitId: string; readonly said: Said },
): Promise<Written<ReferralRecord, Refusals>> {
  return write(ctx, 'survey', async (write) => {
    const locked = await lockOpenVisit(write, visitId);
    if (!locked.ok) return locked;
    const { visit, today } = locked.value;
    const errors = [
      ...(await particularFaults(write.tx, visit.vesselId, { zone: said.zone, itemId: said.itemId })),
      ...(await findingFaults(write, visit.vesselId, said.findingId)),
      ...(said.dueOn < today ? [{ pointer: '/dueOn', detail: 'lies in the past' }] : []),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const { vesselId, vesselName } = visit;
    const record: ReferralRecord = {
      ...{ id: newId(ctx.now), visitId, vesselId, vesselName, ...said, askedOn: today, result: null, version: 1 },
    };
    await insertReferral(write.tx, ctx.organisationId, record, { by: actorText(ctx.actor), at: ctx.now });
    audit(write, { verb: 'refer', subject: 'referral', subjectId: record.id, before: null, after: record });
    await refreshVisitMatters(write.tx, ctx.organisationId, vesselId);
    return done(record);
  });
}

async function findingFaults({ tx }: Write, vesselId: string, findingId: string | null) {
  const isHers = findingId === null || (await loadFinding(tx, findingId))?.vesselId === vesselId;
  return isHers ? [] : [{ pointer: '/findingId', detail: 'is no finding of hers' }];
}

type Result = Omit<ReferralResult, 'recordedAt'>;

export function reportReferral(
  ctx: ActionContext,
  {
    referralId,
    expectedVersion,
    result,
  }: { readonly referralId: string; readonly expectedVersion: number; readonly result: Result },
): Promise<Written<ReferralRecord, Refusals>> {
  return write(ctx, 'answer_findings', async (write) => {
    const found = await loadReferral(write.tx, referralId);
    const vessel = found && (await lockVessel(write.tx, found.vesselId));
    const before = vessel && (await loadReferral(write.tx, referralId));
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (before.result) return refused({ kind: 'conflict', detail: 'Its result is on record already.' });
    const today = formatDay(dayInZone(ctx.now, vessel.timeZone));
    if (result.on > today)
      return refused({ kind: 'invalid', errors: [{ pointer: '/on', detail: 'lies in the future' }] });
    const whole = { ...result, recordedAt: ctx.now.toISOString() };
    if (!(await saveResult(write.tx, before, whole))) return refused({ kind: 'stale', version: before.version });
    const after = { ...before, result: whole, version: before.version + 1 };
    audit(write, { verb: 'report_referral', subject: 'referral', subjectId: referralId, before, after });
    await refreshVisitMatters(write.tx, ctx.organisationId, before.vesselId);
    return done(after);
  });
}
