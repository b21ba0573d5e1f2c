/** Begins a survey visit: the route is kept as it is on that day. */
import { loadRoute } from '@garboard/db/survey-visit/routes.ts';
import type { VisitDetail, VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { insertVisit } from '@garboard/db/survey-visit/visits.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Purpose } from '@garboard/domain/survey-visit/codes.ts';
import type { Craft } from '@garboard/domain/survey-visit/zones.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { detailFaults } from './detail-faults.ts';

export type NewVisit = {
  readonly vesselId: string;
  readonly craft: Craft;
  readonly purpose: Purpose;
  readonly startedOn: string;
  readonly detail: VisitDetail;
};

export function startVisit(
  ctx: ActionContext,
  { vesselId, craft, purpose, startedOn, detail }: NewVisit,
): Promise<Written<VisitRecord, 'not_found' | 'invalid'>> {
  return write(ctx, 'survey', async (write) => {
    const { tx } = write;
    const vessel = await lockVessel(tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const today = formatDay(dayInZone(ctx.now, vessel.timeZone));
    const errors = [
      ...(startedOn > today ? [{ pointer: '/startedOn', detail: 'lies in the future' }] : []),
      ...detailFaults(detail, startedOn),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const visit: VisitRecord = {
      ...{ id: newId(ctx.now), vesselId, vesselName: vessel.name, timeZone: vessel.timeZone },
      ...{ craft, purpose, startedOn, detail, route: (await loadRoute(tx, craft)).zones },
      ...{ createdBy: actorText(ctx.actor), completed: null, version: 1 },
    };
    await insertVisit(tx, ctx.organisationId, visit, ctx.now);
    audit(write, { verb: 'start_visit', subject: 'survey_visit', subjectId: visit.id, before: null, after: visit });
    return done(visit);
  });
}
