/** What could not be examined: it is not assessed until a later visit has looked. */
import {
  insertLimitation,
  insertLimitationAnswer,
  loadLimitation,
  touchLimitation,
} from '@garboard/db/survey-visit/limitations.ts';
import type { LimitationAnswer, LimitationRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { particularFaults } from '../finding/particular-faults.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { lockOpenVisit } from './lock-visit.ts';
import { refreshVisitMatters } from './refresh-visit-matters.ts';

type Said = Pick<LimitationRecord, 'zone' | 'itemId' | 'what' | 'reason' | 'words' | 'trade'>;
type Refusals = 'not_found' | 'stale' | 'conflict' | 'invalid';

export function imposeLimitation(
  ctx: ActionContext,
  { visitId, said }: { readonly visitId: string; readonly said: Said },
): Promise<Written<LimitationRecord, Refusals>> {
  return write(ctx, 'survey', async (write) => {
    const locked = await lockOpenVisit(write, visitId);
    if (!locked.ok) return locked;
    const { visit, today } = locked.value;
    const errors = await particularFaults(write.tx, visit.vesselId, { zone: said.zone, itemId: said.itemId });
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const { vesselId, vesselName } = visit;
    const record: LimitationRecord = {
      ...{ id: newId(ctx.now), visitId, vesselId, vesselName, ...said, imposedOn: today, liftedOn: null, version: 1 },
    };
    await insertLimitation(write.tx, ctx.organisationId, record, { by: actorText(ctx.actor), at: ctx.now });
    audit(write, {
      verb: 'impose_limitation',
      subject: 'limitation',
      subjectId: record.id,
      before: null,
      after: record,
    });
    await refreshVisitMatters(write.tx, ctx.organisationId, vesselId);
    return done(record);
  });
}

type Answered = Pick<LimitationAnswer, 'answer' | 'reason' | 'words'>;

export function answerLimitation(
  ctx: ActionContext,
  said: { readonly limitationId: string; readonly visitId: string; readonly expectedVersion: number } & Answered,
): Promise<Written<LimitationRecord, Refusals>> {
  const { limitationId, visitId, expectedVersion, ...answered } = said;
  return write(ctx, 'survey', async (write) => {
    const found = await loadLimitation(write.tx, limitationId);
    if (!found) return refused({ kind: 'not_found' });
    const locked = await lockOpenVisit(write, visitId);
    const isHers = locked.ok && locked.value.visit.vesselId === found.vesselId;
    if (!locked.ok || !isHers)
      return refused({ kind: 'invalid', errors: [{ pointer: '/visitId', detail: 'is no open visit to this vessel' }] });
    const before = (await loadLimitation(write.tx, limitationId)) ?? found;
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (before.liftedOn) return refused({ kind: 'conflict', detail: 'It is lifted already.' });
    const errors = answerFaults(answered);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const on = locked.value.today;
    const record = {
      id: newId(ctx.now),
      limitationId,
      visitId,
      on,
      ...answered,
      recordedBy: actorText(ctx.actor),
      recordedAt: ctx.now.toISOString(),
    };
    await insertLimitationAnswer(write.tx, ctx.organisationId, before, record);
    const liftedOn = answered.answer === 'lifted' ? on : null;
    await touchLimitation(write.tx, before, liftedOn);
    audit(write, {
      verb: `limitation_${answered.answer}`,
      subject: 'limitation',
      subjectId: limitationId,
      before: null,
      after: { vesselId: before.vesselId, ...record },
    });
    await refreshVisitMatters(write.tx, ctx.organisationId, before.vesselId);
    return done({ ...before, liftedOn, version: before.version + 1 });
  });
}

function answerFaults({ answer, reason, words }: Answered): Fault[] {
  if (answer === 'lifted') return words === null ? [{ pointer: '/words', detail: 'is needed: what was seen' }] : [];
  return reason === null ? [{ pointer: '/reason', detail: 'is needed: why it still was not examined' }] : [];
}
