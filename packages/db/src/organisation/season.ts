/** The organisation's season. Where nothing was ever said there is no row: that reads as version 1 without one. */
import type { Scoped } from '../scope.ts';

export type Season = { readonly from: string; readonly to: string };
export type SeasonRecord = { readonly season: Season | null; readonly version: number };

export async function loadSeason(tx: Scoped): Promise<SeasonRecord> {
  const row = await tx.selectFrom('season').selectAll().executeTakeFirst();
  if (!row) return { season: null, version: 1 };
  const { starts, ends, version } = row;
  return { season: starts === null || ends === null ? null : { from: starts, to: ends }, version };
}

/** Writes only over the version that was read; `false` when somebody was faster. */
export async function saveSeason(
  tx: Scoped,
  organisationId: string,
  { season, version }: SeasonRecord,
): Promise<boolean> {
  const said = { starts: season?.from ?? null, ends: season?.to ?? null, version: version + 1 };
  const { numInsertedOrUpdatedRows } = await tx
    .insertInto('season')
    .values({ organisation_id: organisationId, ...said })
    .onConflict((conflict) =>
      conflict.column('organisation_id').doUpdateSet(said).where('season.version', '=', version),
    )
    .executeTakeFirstOrThrow();
  return numInsertedOrUpdatedRows === 1n;
}
