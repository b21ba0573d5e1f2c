/** Works out what a vessel's findings want of whom and by when, from the findings and the organisation's calendar. */
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import { listVesselsWithOpenFindings, loadOpenFindings } from '@garboard/db/finding/findings.ts';
import { loadPlannedDays, type Matter, putMatters } from '@garboard/db/finding/matters.ts';
import { loadTerms } from '@garboard/db/finding/terms.ts';
import { loadSeason } from '@garboard/db/organisation/season.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { type Calendar, dueOfFinding } from '@garboard/domain/finding/due-of-finding.ts';
import { nextToDo } from '@garboard/domain/finding/words.ts';
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
  const matters = records.flatMap((record) => matterOf(record, calendar) ?? []);
  await putMatters(tx, organisationId, ids, matters);
}

/** After a change of what the whole organisation's findings hang on: its season, or its terms. */
export async function refreshFleetMatters({ tx, ctx }: Write): Promise<void> {
  for (const vesselId of await listVesselsWithOpenFindings(tx)) {
    await lockVessel(tx, vesselId);
    await refreshMatters(tx, ctx.organisationId, vesselId);
  }
}

async function loadCalendar(tx: Scoped, vesselId: string): Promise<Calendar> {
  const { season } = await loadSeason(tx);
  const { terms } = await loadTerms(tx);
  const planned = await loadPlannedDays(tx, vesselId);
  const daysOf = (event: string) => planned.filter((each) => each.event === event).map(({ on }) => on);
  return {
    season,
    withinWeeksDays: terms.withinWeeksDays,
    haulOuts: daysOf('haul_out'),
    visits: daysOf('inspection'),
  };
}

function matterOf({ id, vesselId, finding }: FindingRecord, calendar: Calendar): Matter | null {
  const due = dueOfFinding(finding, calendar);
  if (due.kind === 'ended') return null;
  return {
    id,
    vesselId,
    source: due.kind === 'dated' ? due.source : 'finding',
    zone: finding.zone,
    label: finding.what,
    action: nextToDo(finding),
    sentence: due.because,
    urgency: finding.urgency,
    trade: finding.trade,
    responsible: finding.responsible,
    on: due.kind === 'dated' ? due.on : null,
  };
}
