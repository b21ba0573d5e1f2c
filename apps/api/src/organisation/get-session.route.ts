/** GET /v1/session: whose credential this is. */
import { Session } from '@garboard/contract/organisation/session.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, problems, routes, SIGNED_IN } from '../openapi/declare.ts';
import { read } from '../request/action-context.ts';
import { access, callerOf } from './access.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/session',
  operationId: 'getSession',
  tags: ['Session'],
  summary: 'Ask whom the credential stands for',
  description: 'The organisation and the role of the API key or of the session.',
  security: SIGNED_IN,
  responses: { 200: json(Session, 'The organisation and the role.'), ...problems('unauthenticated', 'fault') },
});

export function getSessionRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { id, name } = await read(c, deps, loadOrganisation);
    return c.json({ organisation: { id, name }, role: callerOf(c).actor.role }, 200);
  });
}
