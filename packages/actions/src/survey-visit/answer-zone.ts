/** Answers a place of the route. Answered again, the last counts; the earlier stays. */
import type { AnswerRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { insertAnswer } from '@garboard/db/survey-visit/walked.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { lockOpenVisit } from './lock-visit.ts';

type Said = Pick<AnswerRecord, 'zone' | 'answer' | 'reason' | 'words'>;

export function answerZone(
  ctx: ActionContext,
  { visitId, said }: { readonly visitId: string; readonly said: Said },
): Promise<Written<AnswerRecord, 'not_found' | 'stale' | 'conflict' | 'invalid'>> {
  return write(ctx, 'survey', async (write) => {
    const locked = await lockOpenVisit(write, visitId);
    if (!locked.ok) return locked;
    const { visit } = locked.value;
    const errors = [
      ...(visit.route.some(({ zone }) => zone === said.zone)
        ? []
        : [{ pointer: '/zone', detail: 'is no place of this route' }]),
      ...(said.answer === 'not_examined' && said.reason === null
        ? [{ pointer: '/reason', detail: 'is needed: why it was not examined' }]
        : []),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const by = { recordedBy: actorText(ctx.actor), recordedAt: ctx.now.toISOString() };
    const record = { id: newId(ctx.now), ...said, ...by };
    await insertAnswer(write.tx, { organisationId: ctx.organisationId, visit }, record);
    audit(write, {
      verb: 'answer_zone',
      subject: 'survey_visit',
      subjectId: visitId,
      before: null,
      after: { vesselId: visit.vesselId, ...record },
    });
    return done(record);
  });
}
