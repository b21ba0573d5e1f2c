/** Says in which order the organisation's people walk a sort of boat. Visits that have begun keep the route they walked. */
import { loadRoute, type RouteRecord, saveRoute } from '@garboard/db/survey-visit/routes.ts';
import type { Craft } from '@garboard/domain/survey-visit/zones.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

type Wanted = { readonly craft: Craft; readonly zones: RouteRecord['zones']; readonly expectedVersion: number };

export function setRoute(
  ctx: ActionContext,
  { craft, zones, expectedVersion }: Wanted,
): Promise<Written<RouteRecord, 'stale' | 'invalid'>> {
  return write(ctx, 'survey', async (write) => {
    const errors = twiceFaults(zones);
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const before = await loadRoute(write.tx, craft);
    const isCurrent = before.version === expectedVersion;
    if (!isCurrent || !(await saveRoute(write.tx, ctx.organisationId, craft, { zones, version: expectedVersion })))
      return refused({ kind: 'stale', version: before.version });
    const after = { zones, version: expectedVersion + 1 };
    audit(write, {
      verb: 'set_route',
      subject: 'organisation',
      subjectId: ctx.organisationId,
      before,
      after: { craft, ...after },
    });
    return done(after);
  });
}

function twiceFaults(zones: Wanted['zones']): Fault[] {
  const codes = zones.map(({ zone }) => zone);
  return codes.flatMap((zone, index) =>
    codes.indexOf(zone) < index ? [{ pointer: `/zones/${index}/zone`, detail: 'stands on the route already' }] : [],
  );
}
