/** What a link shows, as it stands on the day: read in the scope of its vessels, so that the database shows no other. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import type { DueEntry } from '../due-list/due-entry.ts';
import { listStored } from '../due-list/list-stored.ts';
import type { Scoped } from '../scope.ts';
import type { VesselRecord } from '../vessel/vessel-record.ts';
import { listVessels } from '../vessel/vessels.ts';

const MOST = 200;
/** What has a date, what is suspended, and what has none. */
const GROUPS = [{}, { suspended: true }, { standing: 'unknown' }] as const;

export type Shared = {
  readonly vessels: readonly VesselRecord[];
  readonly due: readonly DueEntry[];
  /** More vessels or lines than a page holds. */
  readonly isCut: boolean;
};

export async function readShared(tx: Scoped, day: Day): Promise<Shared> {
  const vessels = await listVessels(tx, MOST);
  const due: DueEntry[] = [];
  let isCut = vessels.more;
  for (const filter of GROUPS) {
    const { rows, more } = await listStored(tx, { day, filter, limit: MOST });
    due.push(...rows);
    isCut ||= more;
  }
  return { vessels: vessels.rows, due, isCut };
}
