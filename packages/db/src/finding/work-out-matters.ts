/** The fleet's matters read anew from the entries: as at a day gone by, or as they were known then. */
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { readFinding } from '@garboard/domain/finding/finding.ts';
import { matterOfFinding } from '@garboard/domain/finding/matter.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';
import type { MatterEntry } from '../due-list/due-entry.ts';
import type { Scoped } from '../scope.ts';
import { workOutVisitMatters } from '../survey-visit/work-out-visit-matters.ts';
import { loadCalendar } from './calendar.ts';
import { loadEntriesOfVessel } from './entries.ts';
import { dueFromOf } from './matters.ts';

export async function workOutMatters(tx: Scoped, cut: Cut): Promise<MatterEntry[]> {
  const vessels = await tx.selectFrom('vessel').select(['id', 'name']).orderBy('id').execute();
  const matters: MatterEntry[] = [];
  for (const vessel of vessels) matters.push(...(await mattersOf(tx, vessel, cut)));
  return matters;
}

async function mattersOf(tx: Scoped, vessel: MatterEntry['vessel'], cut: Cut): Promise<MatterEntry[]> {
  const { asOf, knownAt } = cut;
  const stories = await loadEntriesOfVessel(tx, vessel.id);
  const calendar = await loadCalendar(tx, vessel.id);
  const instant = knownAt && new Date(knownAt).toISOString();
  const ofVisits = await workOutVisitMatters(tx, vessel, cut, calendar);
  const ofFindings = [...stories].flatMap(([id, all]) => {
    const entries = all.filter(
      ({ on, recordedAt }) => (asOf === undefined || on <= formatDay(asOf)) && (!instant || recordedAt <= instant),
    );
    const said = entries[0]?.step === 'found' ? matterOfFinding(readFinding(entries), calendar) : null;
    return said ? [{ vessel, matter: { id, ...said }, dueFrom: dueFromOf(said.on) }] : [];
  });
  return [...ofFindings, ...ofVisits];
}
