/** The organisation's own routes. Where it has none of that sort there is no row: that reads as version 1 of the house's. */
import { type Craft, isKnownZone, routeOf } from '@garboard/domain/survey-visit/zones.ts';
import type { Scoped } from '../scope.ts';
import type { RouteZone } from './visit-record.ts';

export type RouteRecord = { readonly zones: readonly RouteZone[]; readonly version: number };

export async function loadRoute(tx: Scoped, craft: Craft): Promise<RouteRecord> {
  const row = await tx.selectFrom('survey_route').selectAll().where('craft', '=', craft).executeTakeFirst();
  if (row) return { zones: row.zones, version: row.version };
  return { zones: routeOf(craft).map(({ zone, name }) => ({ zone, name })), version: 1 };
}

/** Writes only over the version that was read; `false` when somebody was faster. */
export async function saveRoute(
  tx: Scoped,
  organisationId: string,
  craft: Craft,
  { zones, version }: RouteRecord,
): Promise<boolean> {
  const said = { zones: JSON.stringify(zones), version: version + 1 };
  const { numInsertedOrUpdatedRows } = await tx
    .insertInto('survey_route')
    .values({ organisation_id: organisationId, craft, ...said })
    .onConflict((conflict) =>
      conflict.columns(['organisation_id', 'craft']).doUpdateSet(said).where('survey_route.version', '=', version),
    )
    .executeTakeFirstOrThrow();
  return numInsertedOrUpdatedRows === 1n;
}

/** Whether it is a place of the house's routes or of one of the organisation's own. */
export async function isPlace(tx: Scoped, zone: string): Promise<boolean> {
  if (isKnownZone(zone)) return true;
  const rows = await tx.selectFrom('survey_route').select('zones').execute();
  return rows.some(({ zones }) => zones.some((each) => each.zone === zone));
}
