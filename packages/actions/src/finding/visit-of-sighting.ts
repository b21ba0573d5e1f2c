/** A sighting that says it belongs to a visit: whether it may, and whether a surveyor was there. */
import { loadVisit } from '@garboard/db/survey-visit/visits.ts';
import { allows } from '@garboard/domain/organisation/permission.ts';
import type { Fault } from '../result.ts';
import type { Write } from '../write.ts';

export type OfVisit = { readonly errors: readonly Fault[]; readonly surveyorAttends: boolean };

/** The vessel's row must be locked by the caller: nobody completes the visit meanwhile. */
export async function ofVisit({ tx, ctx }: Write, vesselId: string, visitId: string | null): Promise<OfVisit> {
  if (visitId === null) return { errors: [], surveyorAttends: false };
  const no = (detail: string) => ({ errors: [{ pointer: '/visitId', detail }], surveyorAttends: false });
  if (!allows(ctx.actor, 'survey')) return no('is for those who keep survey visits');
  const visit = await loadVisit(tx, visitId);
  if (visit?.vesselId !== vesselId) return no('is no visit to this vessel');
  if (visit.completed) return no('is completed and sealed');
  return { errors: [], surveyorAttends: visit.detail.persons.some(({ capacity }) => capacity === 'surveyor') };
}
