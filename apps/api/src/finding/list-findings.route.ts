/** GET /v1/findings: what is not right across the fleet, the most urgent first. */
import { HazardCode, StateCode, TradeCode, UrgencyCode, ZoneCode } from '@garboard/contract/finding/codes.ts';
import { FindingPage } from '@garboard/contract/finding/finding.ts';
import { CalendarDay, Id } from '@garboard/contract/shared.ts';
import { type FindingFilter, listFindings } from '@garboard/db/finding/list-findings.ts';
import { rankOf } from '@garboard/domain/finding/codes.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { pageQuery } from '../request/query-params.ts';
import { presentFinding } from './present-finding.ts';

const filters = {
  vesselId: Id.optional(),
  itemId: Id.optional(),
  urgency: UrgencyCode.optional(),
  hazard: HazardCode.optional(),
  state: StateCode.optional(),
  trade: TradeCode.optional(),
  zone: ZoneCode.optional(),
  open: z
    .enum(['true', 'false'])
    .optional()
    .meta({ description: 'Only those that have not ended, or only those that have. Without it: both.' }),
  doBy: CalendarDay.optional().meta({
    description:
      'Only work that can be done until this day: in hand, or due or planned by then, and neither reported done nor put off.',
  }),
  order: z.enum(['urgency', 'age']).default('urgency').meta({
    description: '`urgency`: the most urgent first, and of these the worst hazard. `age`: the longest known first.',
  }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/findings',
  operationId: 'listFindings',
  tags: ['Findings'],
  summary: 'List findings across the fleet',
  description: 'The most urgent first unless `order` says otherwise.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ ...filters, ...pageQuery }) },
  responses: { 200: page(FindingPage, 'A page of findings.'), ...READ_PROBLEMS },
});

const Key = z.object({ place: z.union([z.int().min(0).max(1000), z.iso.date()]), id: Id });

export function listFindingsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, order, open, ...asked } = c.req.valid('query');
    const filter = given({ ...asked, open: open && open === 'true' }) as FindingFilter;
    const question = { list: 'findings', filter, order };
    const start = readCursor(cursor, question, Key);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listFindings(tx, { filter, order, limit, ...start }));
    const last = more ? rows.at(-1) : undefined;
    const key = last && { place: order === 'urgency' ? rankOf(last.finding) : last.finding.firstSeenOn, id: last.id };
    const next = nextCursor(c, question, key);
    return c.json({ items: rows.map((row) => presentFinding(row, deps.now())), nextCursor: next }, 200);
  });
}
