/** A correction of a sealed visit: added beside it, with a name and a reason. */
import type { AddendumRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { loadVisit } from '@garboard/db/survey-visit/visits.ts';
import { insertAddendum } from '@garboard/db/survey-visit/walked.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

type Said = Pick<AddendumRecord, 'name' | 'words' | 'reason'>;

export function addAddendum(
  ctx: ActionContext,
  { visitId, said }: { readonly visitId: string; readonly said: Said },
): Promise<Written<AddendumRecord, 'not_found' | 'conflict'>> {
  return write(ctx, 'survey', async (write) => {
    const visit = await loadVisit(write.tx, visitId);
    if (!visit) return refused({ kind: 'not_found' });
    if (!visit.completed)
      return refused({ kind: 'conflict', detail: 'The visit is still open: write it on the visit itself.' });
    const record = { id: newId(ctx.now), ...said, recordedBy: actorText(ctx.actor), recordedAt: ctx.now.toISOString() };
    await insertAddendum(write.tx, { organisationId: ctx.organisationId, visit }, record);
    audit(write, {
      verb: 'add_addendum',
      subject: 'survey_visit',
      subjectId: visitId,
      before: null,
      after: { vesselId: visit.vesselId, ...record },
    });
    return done(record);
  });
}
