/** Says what file will come: how long it is, by which hash it will be known, and what it shows. */
import { insertUpload, type UploadRecord } from '@garboard/db/evidence/uploads.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { isPlace } from '@garboard/db/survey-visit/routes.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { EvidenceSaid } from '@garboard/domain/evidence/evidence.ts';
import { actorText } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { ofVisit } from '../finding/visit-of-sighting.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

export type NewUpload = {
  readonly vesselId: string;
  readonly sha256: string;
  readonly bytes: number;
  /** `takenOn` is today at the vessel's place where it is `null`. */
  readonly said: Omit<EvidenceSaid, 'takenOn'> & { readonly takenOn: string | null };
};

export function startUpload(
  ctx: ActionContext,
  { vesselId, sha256, bytes, said }: NewUpload,
): Promise<Written<UploadRecord, 'not_found' | 'invalid'>> {
  return write(ctx, 'answer_findings', async (write) => {
    const vessel = await lockVessel(write.tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const today = formatDay(dayInZone(ctx.now, vessel.timeZone));
    const errors = [
      ...(await saidFaults(write.tx, said, today)),
      ...(await ofVisit(write, vesselId, said.visitId)).errors,
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const upload: UploadRecord = {
      id: newId(ctx.now),
      ...{ vesselId, sha256, bytes, received: 0, version: 1 },
      said: { ...said, takenOn: said.takenOn ?? today },
      fate: { kind: 'receiving' },
      createdBy: actorText(ctx.actor),
      createdAt: ctx.now,
    };
    await insertUpload(write.tx, ctx.organisationId, upload);
    return done(upload);
  });
}

async function saidFaults(tx: Scoped, { zone, point, takenOn }: NewUpload['said'], today: string): Promise<Fault[]> {
  return [
    ...(zone !== null && !(await isPlace(tx, zone)) ? [{ pointer: '/zone', detail: 'is no place of the route' }] : []),
    ...(point !== null && zone === null ? [{ pointer: '/point', detail: 'goes with a place' }] : []),
    ...(takenOn !== null && takenOn > today ? [{ pointer: '/takenOn', detail: 'lies in the future' }] : []),
  ];
}
