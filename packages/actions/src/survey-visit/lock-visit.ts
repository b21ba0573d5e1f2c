/** A visit with its vessel's row locked: what is written on a visit is written one after another. */
import type { VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { loadVisit } from '@garboard/db/survey-visit/visits.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { done, type Result, refused } from '../result.ts';
import type { Write } from '../write.ts';

export type Locked = { readonly visit: VisitRecord; readonly today: string };

/** Still open: of a completed one nothing changes. */
export async function lockOpenVisit(
  { tx, ctx }: Write,
  visitId: string,
  expectedVersion?: number,
): Promise<Result<Locked, 'not_found' | 'stale' | 'conflict'>> {
  const found = await loadVisit(tx, visitId);
  if (!found) return refused({ kind: 'not_found' });
  await lockVessel(tx, found.vesselId);
  const visit = (await loadVisit(tx, visitId)) ?? found;
  if (expectedVersion !== undefined && visit.version !== expectedVersion)
    return refused({ kind: 'stale', version: visit.version });
  if (visit.completed) return refused({ kind: 'conflict', detail: SEALED });
  return done({ visit, today: formatDay(dayInZone(ctx.now, visit.timeZone)) });
}

const SEALED = 'The visit is completed and sealed: a correction is an addendum.';
