/** What the days of a vessel's findings hang on besides themselves. */
import type { Calendar } from '@garboard/domain/finding/due-of-finding.ts';
import { loadSeason } from '../organisation/season.ts';
import type { Scoped } from '../scope.ts';
import { loadTerms } from './terms.ts';

export async function loadCalendar(tx: Scoped, vesselId: string): Promise<Calendar> {
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

/** Planned haul-outs and planned inspections. */
function loadPlannedDays(tx: Scoped, vesselId: string): Promise<{ event: string; on: string }[]> {
  return tx
    .selectFrom('vessel_event')
    .select(['event', 'on_day as on'])
    .where('vessel_id', '=', vesselId)
    .where('planned', '=', true)
    .where('event', 'in', ['haul_out', 'inspection'])
    .orderBy('on_day')
    .execute();
}
