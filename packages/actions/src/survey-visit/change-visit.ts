/** Changes what is written of an attendance while it is open. */
import type { VisitDetail, VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { saveVisit } from '@garboard/db/survey-visit/visits.ts';
import type { Purpose } from '@garboard/domain/survey-visit/codes.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { detailFaults } from './detail-faults.ts';
import { lockOpenVisit } from './lock-visit.ts';

export type VisitChange = {
  readonly visitId: string;
  readonly expectedVersion: number;
  readonly purpose: Purpose | undefined;
  readonly detail: Partial<VisitDetail>;
};

export function changeVisit(
  ctx: ActionContext,
  { visitId, expectedVersion, purpose, detail }: VisitChange,
): Promise<Written<VisitRecord, 'not_found' | 'stale' | 'conflict' | 'invalid'>> {
  return write(ctx, 'survey', async (write) => {
    const locked = await lockOpenVisit(write, visitId, expectedVersion);
    if (!locked.ok) return locked;
    const { visit: before } = locked.value;
    const after = { ...before, purpose: purpose ?? before.purpose, detail: { ...before.detail, ...detail } };
    const errors = detailFaults(after.detail, after.startedOn);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    if (!(await saveVisit(write.tx, before, after))) return refused({ kind: 'stale', version: before.version });
    audit(write, { verb: 'change_visit', subject: 'survey_visit', subjectId: visitId, before, after });
    return done({ ...after, version: before.version + 1 });
  });
}
