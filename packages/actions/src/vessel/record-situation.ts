/** States what a vessel is doing from a day on. Earlier situations stay on record. */
import { insertSituation, type SituationRecord } from '@garboard/db/vessel/situations.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { planFaults } from './plan-faults.ts';

export type NewSituation = Omit<SituationRecord, 'id' | 'recordedAt'> & { readonly vesselId: string };

export function recordSituation(
  ctx: ActionContext,
  { vesselId, ...situation }: NewSituation,
): Promise<Written<SituationRecord, 'not_found' | 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    const vessel = await lockVessel(write.tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const errors = planFaults('/from', situation.from, ctx.now);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const record = { ...situation, id: newId(ctx.now), recordedAt: ctx.now.toISOString() };
    await insertSituation(write.tx, ctx.organisationId, vesselId, record);
    audit(write, {
      verb: 'record_situation',
      subject: 'situation',
      subjectId: record.id,
      before: null,
      after: { vesselId, ...record },
    });
    await refreshObligations(write.tx, ctx.organisationId, vesselId);
    return done(record);
  });
}
