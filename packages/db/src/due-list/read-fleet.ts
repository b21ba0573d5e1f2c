/** A row per vessel with her counts by standing, and everything of hers that falls on a day until the horizon. */
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { countedAs } from '@garboard/domain/due-list/standing.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';
import { sql } from 'kysely';
import { workOutMatters } from '../finding/work-out-matters.ts';
import { toObligation } from '../item/obligation-record.ts';
import type { Page } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { type SituationRecord, toSituationRecord } from '../vessel/situations.ts';
import type { VesselRecord } from '../vessel/vessel-record.ts';
import { listVessels, type VesselKey } from '../vessel/vessels.ts';
import type { CountedStandings, DueEntry, MatterEntry } from './due-entry.ts';
import { mattersOfVessels } from './list-matters.ts';
import { countUp } from './totals.ts';
import { workOutFleet } from './work-out-fleet.ts';

type HaulOut = { readonly on: string; readonly planned: boolean };

export type FleetVessel = {
  readonly vessel: VesselRecord;
  readonly counts: CountedStandings;
  /** Every obligation of hers, dated ones in the order of `overdueAfter`. */
  readonly entries: readonly DueEntry[];
  /** What waits for somebody besides: findings, reviews, referrals, limitations. */
  readonly matters: readonly MatterEntry[];
  readonly situations: readonly SituationRecord[];
  /** Recorded and planned, by day. */
  readonly haulOuts: readonly HaulOut[];
};

export type FleetQuestion = {
  readonly day: Day;
  readonly cut?: Cut;
  readonly limit: number;
  readonly after?: VesselKey;
};

export async function readFleet(tx: Scoped, { day, cut, limit, after }: FleetQuestion): Promise<Page<FleetVessel>> {
  const vessels = await listVessels(tx, limit, after);
  const ids = vessels.rows.map(({ id }) => id);
  if (ids.length === 0) return { rows: [], more: false };
  const entries = Map.groupBy(
    cut ? await workOutFleet(tx, cut) : await storedEntries(tx, vessels.rows),
    ({ vessel }) => vessel.id,
  );
  const matters = Map.groupBy(
    cut ? await workOutMatters(tx, cut) : await mattersOfVessels(tx, ids),
    ({ vessel }) => vessel.id,
  );
  const situations = Map.groupBy(await situationsOf(tx, ids), ({ vesselId }) => vesselId);
  const haulOuts = Map.groupBy(await haulOutsOf(tx, ids), ({ vesselId }) => vesselId);
  const rows = vessels.rows.map((vessel) => {
    const hers = entries.get(vessel.id) ?? [];
    return {
      vessel,
      counts: countOn(hers, day),
      entries: hers.toSorted(byOverdueAfter),
      matters: matters.get(vessel.id) ?? [],
      situations: situations.get(vessel.id) ?? [],
      haulOuts: (haulOuts.get(vessel.id) ?? []).map(({ on, planned }) => ({ on, planned })),
    };
  });
  return { rows, more: vessels.more };
}

async function storedEntries(tx: Scoped, vessels: readonly VesselRecord[]): Promise<DueEntry[]> {
  const names = new Map(vessels.map(({ id, name }) => [id, name]));
  const rows = await tx
    .selectFrom('obligation as o')
    .innerJoin('item as i', (join) =>
      join.onRef('i.organisation_id', '=', 'o.organisation_id').onRef('i.id', '=', 'o.item_id'),
    )
    .selectAll('o')
    .select(['i.kind', 'i.label', 'i.zone', 'i.quantity'])
    .where('o.vessel_id', 'in', [...names.keys()])
    .execute();
  return rows.map((row) => ({
    vessel: { id: row.vessel_id, name: names.get(row.vessel_id) ?? '' },
    item: { id: row.item_id, kind: row.kind, label: row.label, zone: row.zone, quantity: row.quantity },
    obligation: toObligation(row),
  }));
}

async function situationsOf(
  tx: Scoped,
  vesselIds: readonly string[],
): Promise<(SituationRecord & { vesselId: string })[]> {
  const rows = await tx
    .selectFrom('situation')
    .selectAll()
    .where('vessel_id', 'in', [...vesselIds])
    .orderBy('starts_on')
    .orderBy(sql`recorded_at`)
    .execute();
  return rows.map((row) => ({ ...toSituationRecord(row), vesselId: row.vessel_id }));
}

function haulOutsOf(tx: Scoped, vesselIds: readonly string[]): Promise<(HaulOut & { vesselId: string })[]> {
  return tx
    .selectFrom('vessel_event')
    .select(['vessel_id as vesselId', 'on_day as on', 'planned'])
    .where('vessel_id', 'in', [...vesselIds])
    .where('event', '=', 'haul_out')
    .orderBy('on_day')
    .orderBy('id')
    .execute();
}

function countOn(entries: readonly DueEntry[], day: Day): CountedStandings {
  return countUp(
    entries.map(({ obligation }) => ({
      standing: countedAs(obligation, day),
      weight: obligation.weight,
      n: 1,
    })),
  );
}

const sortText = ({ obligation: { outcome } }: DueEntry) =>
  outcome.kind === 'dated' ? formatDay(outcome.overdueAfter) : 'infinity';
const byOverdueAfter = (a: DueEntry, b: DueEntry) => (sortText(a) < sortText(b) ? -1 : 1);
