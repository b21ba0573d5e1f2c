/** Says when the organisation's season is, or that nothing is said of one. */
import { loadSeason, type Season, type SeasonRecord, saveSeason } from '@garboard/db/organisation/season.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { refreshFleetMatters } from '../finding/refresh-matters.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

export type SeasonToSet = { readonly season: Season | null; readonly expectedVersion: number };

export function setSeason(
  ctx: ActionContext,
  { season, expectedVersion }: SeasonToSet,
): Promise<Written<SeasonRecord, 'stale'>> {
  return write(ctx, 'keep_register', async (write) => {
    const before = await loadSeason(write.tx);
    const isCurrent = before.version === expectedVersion;
    if (!isCurrent || !(await saveSeason(write.tx, ctx.organisationId, { season, version: expectedVersion })))
      return refused({ kind: 'stale', version: before.version });
    const after = { season, version: expectedVersion + 1 };
    audit(write, { verb: 'set_season', subject: 'organisation', subjectId: ctx.organisationId, before, after });
    await refreshFleetMatters(write);
    return done(after);
  });
}
