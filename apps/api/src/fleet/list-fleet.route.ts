/** GET /v1/fleet: the dashboard's first paint, a row per vessel with her marks on the horizon. */
import { Fleet } from '@garboard/contract/fleet/fleet.ts';
import { CalendarDay, Id } from '@garboard/contract/shared.ts';
import { readFleet } from '@garboard/db/due-list/read-fleet.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { loadSeason } from '@garboard/db/organisation/season.ts';
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { asAt } from '../request/as-at.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { asAtQuery, pageQuery, wholeNumber } from '../request/query-params.ts';
import { presentFleetRow } from './present-fleet-row.ts';

const horizonDays = wholeNumber({ min: 1, max: 3_660 })
  .default(365)
  .meta({ description: 'How far the horizon reaches, in days; 365 if not given.', default: 365, example: 365 });

const route = createRoute({
  method: 'get',
  path: '/v1/fleet',
  operationId: 'listFleet',
  tags: ['Due list'],
  summary: 'See the whole fleet on its horizon',
  description:
    'A row per vessel, by name: how much stands how, the oldest that is overdue, and a mark for each day on which something falls, up to the horizon.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ horizonDays, ...asAtQuery, ...pageQuery }) },
  responses: { 200: page(Fleet, 'A page of the fleet.'), ...READ_PROBLEMS },
});

const Key = z.object({ day: CalendarDay, name: z.string(), id: Id });

export function listFleetRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, horizonDays: ahead, ...asked } = c.req.valid('query');
    const question = { list: 'fleet', ahead, ...asked };
    const start = readCursor(cursor, question, Key);
    if (!start.ok) return badCursor(c);
    const { name, season, at, rows, more } = await read(c, deps, async (tx) => {
      const { name, timeZone } = await loadOrganisation(tx);
      const at = await asAt(tx, { ...asked, asOf: asked.asOf ?? start.after?.day }, deps.now(), timeZone);
      const { season } = await loadSeason(tx);
      return { name, season, at, ...(await readFleet(tx, { ...at, ...start, limit })) };
    });
    const until = addDays(at.day, ahead);
    const items = rows.map((row) => presentFleetRow(row, { asOf: at.day, until }));
    const last = more ? rows.at(-1)?.vessel : undefined;
    const next = nextCursor(c, question, last && { day: at.text, name: last.name, id: last.id });
    const days = { asOf: at.text, until: formatDay(until) };
    return c.json({ organisation: name, ...days, season, items, nextCursor: next }, 200);
  });
}
