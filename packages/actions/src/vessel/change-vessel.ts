/** Changes a vessel's particulars. New schemes bring new obligations, so her items are worked out again. */
import type { Particulars, VesselRecord } from '@garboard/db/vessel/vessel-record.ts';
import { lockVessel, updateVessel } from '@garboard/db/vessel/vessels.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { particularFaults } from './particular-faults.ts';

export type VesselChange = {
  readonly vesselId: string;
  readonly expectedVersion: number;
  /** What is absent stays; `null` takes it away. */
  readonly change: Partial<Particulars>;
};

export function changeVessel(
  ctx: ActionContext,
  { vesselId, expectedVersion, change }: VesselChange,
): Promise<Written<VesselRecord, 'not_found' | 'stale' | 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    const before = await lockVessel(write.tx, vesselId);
    if (!before) return refused({ kind: 'not_found' });
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    const wanted = { ...before, ...change };
    const errors = particularFaults(wanted, ctx.now);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const after = await updateVessel(write.tx, vesselId, expectedVersion, wanted);
    if (!after) return refused({ kind: 'stale', version: before.version });
    audit(write, { verb: 'change_vessel', subject: 'vessel', subjectId: vesselId, before, after });
    if (change.schemes) await refreshObligations(write.tx, ctx.organisationId, vesselId);
    return done(after);
  });
}
