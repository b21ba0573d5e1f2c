/** Puts a vessel on the register. */

import type { Particulars, VesselRecord } from '@garboard/db/vessel/vessel-record.ts';
import { enterRegister, insertVessel } from '@garboard/db/vessel/vessels.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { particularFaults } from './particular-faults.ts';

export function createVessel(ctx: ActionContext, particulars: Particulars): Promise<Written<VesselRecord, 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    // Whoever may see some vessels only could not see the new one.
    if (ctx.vesselIds !== 'all') return refused({ kind: 'forbidden' });
    const errors = particularFaults(particulars, ctx.now);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const vessel = { ...particulars, id: newId(ctx.now), createdAt: ctx.now.toISOString(), version: 1 };
    await enterRegister(write.tx, ctx.organisationId);
    await insertVessel(write.tx, ctx.organisationId, vessel);
    audit(write, { verb: 'create_vessel', subject: 'vessel', subjectId: vessel.id, before: null, after: vessel });
    return done(vessel);
  });
}
