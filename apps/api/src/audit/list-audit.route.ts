/** GET /v1/audit: who changed what, the latest first. */
import { ActorText, AuditPage, Subject, Verb } from '@garboard/contract/audit/audit.ts';
import { AskedDay, Id } from '@garboard/contract/shared.ts';
import { type AuditFilter, listAudit } from '@garboard/db/audit/list-audit.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentAudit } from './present-audit.ts';
import { ofWholeFleet } from './whole-fleet.ts';

const filters = {
  subject: Subject.optional().meta({ description: 'Only changes of such things: `vessel`, `item`, `fact`, …' }),
  subjectId: Id.optional().meta({ description: 'Only changes of this one thing.' }),
  vesselId: Id.optional().meta({ description: 'Only changes of this vessel and of what is aboard.' }),
  actor: ActorText.optional().meta({ description: 'Only what this person or key did, `kind:id` as in `actor`.' }),
  verb: Verb.optional().meta({ description: 'Only what was done in this way.' }),
  from: AskedDay.optional().meta({ description: 'From this day on, in the organisation’s time zone.' }),
  to: AskedDay.optional().meta({ description: 'Up to this day and with it, in the organisation’s time zone.' }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/audit',
  operationId: 'listAudit',
  tags: ['Audit'],
  summary: 'List who changed what',
  description:
    'The latest first, with what was and what is since. For owners and managers who see the whole fleet. Names are those of today; the record itself holds ids only.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ ...filters, ...pageQuery }) },
  responses: { 200: page(AuditPage, 'A page of changes.'), ...READ_PROBLEMS, ...problems('forbidden') },
});

export function listAuditRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'read_audit'), ofWholeFleet] as const }, async (c) => {
    const { limit, cursor, ...asked } = c.req.valid('query');
    const question = { list: 'audit', ...asked };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const filter = given(asked) as AuditFilter;
    const { rows, more } = await read(c, deps, (tx) => listAudit(tx, filter, limit, start.after?.id));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: rows.map(presentAudit), nextCursor: next }, 200);
  });
}
