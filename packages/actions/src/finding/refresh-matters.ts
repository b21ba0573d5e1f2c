/** Works out what a vessel's findings want of whom and by when, from the findings and the organisation's calendar. */

import { loadCalendar } from '@garboard/db/finding/calendar.ts';
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import { listVesselsWithOpenFindings, loadOpenFindings } from '@garboard/db/finding/findings.ts';
import { putMatters } from '@garboard/db/finding/matters.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { matterOfFinding } from '@garboard/domain/finding/matter.ts';
import type { Write } from '../write.ts';

/** All of the vessel's open findings, or only those given; those that have ended want nothing any more. */
export async function refreshMatters(
  tx: Scoped,
  organisationId: string,
  vesselId: string,
  some?: readonly FindingRecord[],
): Promise<void> {
  const records = some ?? (await loadOpenFindings(tx, vesselId));
  if (records.length === 0) return;
  const calendar = await loadCalendar(tx, vesselId);
  const ids = records.map(({ id }) => id);
  const matters = records.flatMap(({ id, finding }) => {
    const said = matterOfFinding(finding, calendar);
    return said ? [{ id, vesselId, ...said }] : [];
  });
  await putMatters(tx, organisationId, ids, matters);
}

/** After a change of what the whole organisation's findings hang on: its season, or its terms. */
export async function refreshFleetMatters({ tx, ctx }: Write): Promise<void> {
  for (const vesselId of await listVesselsWithOpenFindings(tx)) {
    await lockVessel(tx, vesselId);
    await refreshMatters(tx, ctx.organisationId, vesselId);
  }
}
