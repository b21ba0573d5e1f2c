/** Records one dated thing that happened to a vessel, or is planned for her. */
import { insertEvent, type VesselEventRecord } from '@garboard/db/vessel/events.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { refreshMatters } from '../finding/refresh-matters.ts';
import { refreshObligations } from '../item/refresh-obligations.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { refreshVisitMatters } from '../survey-visit/refresh-visit-matters.ts';
import { write } from '../write.ts';
import { planFaults } from './plan-faults.ts';

export type NewEvent = Omit<VesselEventRecord, 'id' | 'recordedAt'> & { readonly vesselId: string };

export function recordEvent(
  ctx: ActionContext,
  { vesselId, ...event }: NewEvent,
): Promise<Written<VesselEventRecord, 'not_found' | 'invalid'>> {
  return write(ctx, 'record_facts', async (write) => {
    const vessel = await lockVessel(write.tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const errors = eventFaults(event, ctx.now, vessel.timeZone);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const record = { ...event, id: newId(ctx.now), recordedAt: ctx.now.toISOString() };
    await insertEvent(write.tx, ctx.organisationId, vesselId, record);
    audit(write, {
      verb: 'record_event',
      subject: 'event',
      subjectId: record.id,
      before: null,
      after: { vesselId, ...record },
    });
    await refreshObligations(write.tx, ctx.organisationId, vesselId);
    if (event.planned) {
      await refreshMatters(write.tx, ctx.organisationId, vesselId);
      await refreshVisitMatters(write.tx, ctx.organisationId, vesselId);
    }
    return done(record);
  });
}

function eventFaults(event: Pick<NewEvent, 'on' | 'planned'>, now: Date, timeZone: string): Fault[] {
  const faults = planFaults('/on', event.on, now);
  const isAhead = event.on > formatDay(dayInZone(now, timeZone));
  if (isAhead && !event.planned) faults.push({ pointer: '/on', detail: 'lies in the future: say that it is planned' });
  return faults;
}
