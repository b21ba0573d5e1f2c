/** Completes a visit: refused with what is unanswered and where; else sealed with a hash, all in one act. */
import { canonical } from '@garboard/db/canonical.ts';
import type { VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { sealVisit } from '@garboard/db/survey-visit/visits.ts';
import type { Unanswered } from '@garboard/domain/survey-visit/unanswered.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { lockOpenVisit } from './lock-visit.ts';
import { loadWalk, type VisitWalk } from './walk-of-visit.ts';

export type Completion = { readonly visitId: string; readonly expectedVersion: number; readonly completedOn: string };

export function completeVisit(
  ctx: ActionContext,
  { visitId, expectedVersion, completedOn }: Completion,
): Promise<Written<VisitRecord, 'not_found' | 'stale' | 'conflict' | 'invalid'>> {
  return write(ctx, 'survey', async (write) => {
    const locked = await lockOpenVisit(write, visitId, expectedVersion);
    if (!locked.ok) return locked;
    const { visit, today } = locked.value;
    const walk = await loadWalk(write.tx, visit);
    const errors = [...dayFaults(completedOn, visit, today), ...walk.unanswered.map(toFault)];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const by = actorText(ctx.actor);
    const { text: sealed, hash } = canonical(
      contentOf(visit, walk, { completedOn, completedBy: by, completedAt: ctx.now.toISOString() }),
    );
    await sealVisit(write.tx, visit, { on: completedOn, at: ctx.now, by, sealed, hash });
    const completed = { on: completedOn, at: ctx.now.toISOString(), by, hash: hash.toString('hex') };
    audit(write, {
      verb: 'complete_visit',
      subject: 'survey_visit',
      subjectId: visitId,
      before: null,
      after: { vesselId: visit.vesselId, ...completed },
    });
    return done({ ...visit, completed, version: visit.version + 1 });
  });
}

function dayFaults(completedOn: string, { startedOn }: VisitRecord, today: string): Fault[] {
  if (completedOn > today) return [{ pointer: '/completedOn', detail: 'lies in the future' }];
  return completedOn < startedOn
    ? [{ pointer: '/completedOn', detail: `lies before ${startedOn}, when it began` }]
    : [];
}

const WHAT: Record<Unanswered['what'], string> = {
  zone: 'the place is not answered',
  finding: 'the finding is not answered',
  limitation: 'what could not be examined is not answered',
};

/** The pointer leads to the answer that is missing; the words say what and where. */
const toFault = ({ what, id, zone, words }: Unanswered): Fault => ({
  pointer: `/${what}s/${id}`,
  detail: `${WHAT[what]}: ${words} (${zone.replaceAll('_', ' ')})`,
});

/** Everything of the visit; what was not answered is nothing by now. */
function contentOf(visit: VisitRecord, walk: VisitWalk, completion: object): object {
  const { version: _, completed: __, ...attendance } = visit;
  const { unanswered: ___, ...walked } = walk;
  return { visit: attendance, ...walked, ...completion };
}
