/** GET /v1/season: when the organisation's season is. */
import { OwnSeason } from '@garboard/contract/organisation/season.ts';
import { loadSeason } from '@garboard/db/organisation/season.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { problems, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { access } from './access.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/season',
  operationId: 'getSeason',
  tags: ['Due list'],
  summary: 'Read when the season is',
  description: 'The months in which the boats are used most, a band on the horizon; `null` where nothing is said.',
  security: SIGNED_IN,
  responses: { 200: versioned(OwnSeason, 'The season.'), ...problems('unauthenticated', 'fault') },
});

export function getSeasonRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { season, version } = await read(c, deps, loadSeason);
    tellWritten(c, { version });
    return c.json({ season }, 200);
  });
}
