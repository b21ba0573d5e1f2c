/** Enters something that is not right. From here on it lives until somebody other than whoever mended it has looked. */
import { insertEntry } from '@garboard/db/finding/entries.ts';
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import { insertFinding, nextNumber } from '@garboard/db/finding/findings.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Step } from '@garboard/domain/finding/entry.ts';
import { readFinding } from '@garboard/domain/finding/finding.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { evidenceFaults } from '../evidence/evidence-faults.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { particularFaults } from './particular-faults.ts';
import { refreshMatters } from './refresh-matters.ts';
import { entryOf, told } from './take-step.ts';
import { ofVisit } from './visit-of-sighting.ts';

type FoundStep = Step & { readonly step: 'found' };
export type NewFinding = { readonly vesselId: string; readonly on: string; readonly found: Omit<FoundStep, 'step'> };

export function enterFinding(
  ctx: ActionContext,
  { vesselId, on, found }: NewFinding,
): Promise<Written<FindingView, 'not_found' | 'invalid'>> {
  return write(ctx, 'answer_findings', async (write) => {
    const vessel = await lockVessel(write.tx, vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const today = formatDay(dayInZone(ctx.now, vessel.timeZone));
    const errors = [
      ...dayFaults(on, today),
      ...urgentByFaults(found, on),
      ...(await ofVisit(write, vesselId, found.visitId)).errors,
      ...(await particularFaults(write.tx, vesselId, found)),
      ...(await evidenceFaults(write.tx, vesselId, found.evidence)),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    return told<never>(write, done(await beginFinding(write, vesselId, on, found)));
  });
}

/** Writes a new finding of a vessel whose row is locked. */
export async function beginFinding(
  write: Write,
  vesselId: string,
  on: string,
  found: Omit<FoundStep, 'step'>,
): Promise<FindingRecord> {
  const { tx, ctx } = write;
  const entry = entryOf(write, { step: 'found', ...found }, on);
  const record: FindingRecord = {
    id: newId(ctx.now),
    vesselId,
    number: await nextNumber(tx, vesselId),
    version: 1,
    createdAt: ctx.now.toISOString(),
    finding: readFinding([entry]),
  };
  await insertFinding(tx, ctx.organisationId, record);
  await insertEntry(tx, { organisationId: ctx.organisationId, findingId: record.id, vesselId }, entry);
  await refreshMatters(tx, ctx.organisationId, vesselId, [record]);
  audit(write, {
    verb: 'finding_found',
    subject: 'finding',
    subjectId: record.id,
    before: null,
    after: { vesselId, number: record.number, entry },
  });
  return record;
}

const dayFaults = (on: string, today: string): Fault[] =>
  on > today ? [{ pointer: '/on', detail: 'lies in the future' }] : [];

/** The surveyor's own day goes with the weeks it names, and lies ahead of the day it was said. */
export function urgentByFaults({ urgency, urgentBy }: Pick<FoundStep, 'urgency' | 'urgentBy'>, on: string): Fault[] {
  if (urgentBy === null) return [];
  if (urgency !== 'within_weeks') return [{ pointer: '/urgentBy', detail: 'goes with within_weeks only' }];
  return urgentBy < on ? [{ pointer: '/urgentBy', detail: 'lies before the day it was seen' }] : [];
}
