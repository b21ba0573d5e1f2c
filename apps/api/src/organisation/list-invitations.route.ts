/** GET /v1/invitations: those that nobody has answered. */
import { InvitationPage } from '@garboard/contract/organisation/invitation.ts';
import { listOpenInvitations } from '@garboard/db/organisation/invitations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { access } from './access.ts';
import { presentInvitation } from './present-people.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/invitations',
  operationId: 'listInvitations',
  tags: ['People'],
  summary: 'List the invitations that nobody has answered',
  description: 'For `owner` and `manager`. Those that have run out stay until they are withdrawn.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(InvitationPage, 'A page of invitations.'), ...READ_PROBLEMS },
});

export function listInvitationsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'manage_people') }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'invitations' };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listOpenInvitations(tx, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: rows.map(presentInvitation), nextCursor: next }, 200);
  });
}
