/** Writes down what was measured at a survey point. */
import type { ReadingRecord, VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { insertReading } from '@garboard/db/survey-visit/walked.ts';
import { MEASURES, type Measure } from '@garboard/domain/survey-visit/codes.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { lockOpenVisit } from './lock-visit.ts';

type Said = Pick<ReadingRecord, 'zone' | 'point' | 'value' | 'instrument' | 'words'> & { readonly measure: Measure };
export type Taken = { readonly reading: ReadingRecord; readonly visit: VisitRecord };

export function takeReading(
  ctx: ActionContext,
  { visitId, said }: { readonly visitId: string; readonly said: Said },
): Promise<Written<Taken, 'not_found' | 'stale' | 'conflict' | 'invalid'>> {
  return write(ctx, 'survey', async (write) => {
    const locked = await lockOpenVisit(write, visitId);
    if (!locked.ok) return locked;
    const { visit, today } = locked.value;
    const errors = readingFaults(said, visit);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const reading = { id: newId(ctx.now), ...said, unit: MEASURES[said.measure], takenOn: today };
    const by = { recordedBy: actorText(ctx.actor), recordedAt: ctx.now.toISOString() };
    await insertReading(write.tx, { organisationId: ctx.organisationId, visit }, { ...reading, ...by });
    audit(write, {
      verb: 'take_reading',
      subject: 'survey_visit',
      subjectId: visitId,
      before: null,
      after: { vesselId: visit.vesselId, ...reading },
    });
    return done({ reading, visit });
  });
}

function readingFaults({ zone, instrument, value, words }: Said, { route, detail }: VisitRecord): Fault[] {
  const isKnown = instrument === null || detail.instruments.some(({ key }) => key === instrument);
  return [
    ...(route.some((each) => each.zone === zone) ? [] : [{ pointer: '/zone', detail: 'is no place of this route' }]),
    ...(isKnown ? [] : [{ pointer: '/instrument', detail: 'is no instrument of this visit' }]),
    ...(value === null && words === null
      ? [{ pointer: '/words', detail: 'is needed where nothing was measured: why not' }]
      : []),
  ];
}
