/** GET /v1/session: whose credential this is. */
import { Session } from '@garboard/contract/organisation/session.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { permissionsOf } from '@garboard/domain/organisation/permission.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, problems, routes, SIGNED_IN } from '../openapi/declare.ts';
import { read } from '../request/action-context.ts';
import { anyAccess } from './access.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/session',
  operationId: 'getSession',
  tags: ['Session'],
  summary: 'Ask whom the credential stands for',
  description: 'The person, the organisation they are at and what they may there; or the organisation of an API key.',
  security: SIGNED_IN,
  responses: { 200: json(Session, 'Who it is.'), ...problems('unauthenticated', 'fault') },
});

export function getSessionRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: anyAccess(deps) }, async (c) => {
    const { person, caller } = c.var;
    const who = person && { person: { id: person.id, name: person.name, email: person.email } };
    if (!caller) return c.json({ ...who, permissions: [] }, 200);
    const { id, name } = await read(c, deps, loadOrganisation);
    const { role } = caller.actor;
    const narrowed = caller.vesselIds !== 'all' && { vesselIds: [...caller.vesselIds] };
    return c.json(
      { ...who, organisation: { id, name }, role, permissions: permissionsOf(caller.actor), ...narrowed },
      200,
    );
  });
}
