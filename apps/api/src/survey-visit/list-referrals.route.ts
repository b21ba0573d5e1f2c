/** GET /v1/referrals: across the fleet. */
import { Id } from '@garboard/contract/shared.ts';
import { ReferralPage } from '@garboard/contract/survey-visit/walk.ts';
import { listReferrals } from '@garboard/db/survey-visit/referrals.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentReferral } from './present-visit.ts';

const filters = {
  vesselId: Id.optional(),
  open: z.enum(['true', 'false']).optional().meta({ description: 'Without it: both.' }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/referrals',
  operationId: 'listReferrals',
  tags: ['Visits'],
  summary: 'List referrals',
  description: 'Specialists who must look closer, in the order in which they were asked.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ ...filters, ...pageQuery }) },
  responses: { 200: page(ReferralPage, 'A page of referrals.'), ...READ_PROBLEMS },
});

export function listReferralsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, vesselId, open } = c.req.valid('query');
    const filter = given({ vesselId, open: open === undefined ? undefined : open === 'true' });
    const question = { list: 'referrals', filter };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listReferrals(tx, filter, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: rows.map(presentReferral), nextCursor: next }, 200);
  });
}
