/** GET /v1/people/{personId}: what somebody may here. */
import { Person } from '@garboard/contract/organisation/person.ts';
import { loadMember } from '@garboard/db/organisation/people.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { PersonPath, READ_ONE_PROBLEMS, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { etagOf } from '../request/etag.ts';
import { access, callerOf } from './access.ts';
import { presentPerson } from './present-people.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/people/{personId}',
  operationId: 'getPerson',
  tags: ['People'],
  summary: 'Read what somebody may here',
  description: 'Only who belongs to the organisation now.',
  security: SIGNED_IN,
  request: { params: PersonPath },
  responses: { 200: versioned(Person, 'The person.'), ...READ_ONE_PROBLEMS },
});

export function getPersonRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { personId } = c.req.valid('param');
    const member = await read(c, deps, (tx) => loadMember(tx, personId));
    if (!member) return problem(c, 'not-found');
    c.header('etag', etagOf(member.version));
    return c.json(presentPerson(member, callerOf(c).actor), 200);
  });
}
