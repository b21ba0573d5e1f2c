/** PATCH /v1/people/{personId}: changes what somebody may. */
import { changeMember } from '@garboard/actions/organisation/change-member.ts';
import { Person, PersonChange } from '@garboard/contract/organisation/person.ts';
import { loadMember } from '@garboard/db/organisation/people.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  PersonPath,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext, read } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { access, callerOf } from './access.ts';
import { presentPerson, toVessels } from './present-people.ts';

const route = createRoute({
  method: 'patch',
  path: '/v1/people/{personId}',
  operationId: 'changePerson',
  tags: ['People'],
  summary: 'Change what somebody may',
  description:
    'For `owner` and `manager`; only an owner makes an owner or changes one. The last owner stays one. Their next request goes by what is granted now. `If-Match` is required.',
  security: SIGNED_IN,
  request: { params: PersonPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(PersonChange) },
  responses: {
    200: changed(Person, 'The person as changed.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function changePersonRoute(deps: Deps) {
  const middleware = [access(deps, 'manage_people'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { personId } = c.req.valid('param');
    const asked = c.req.valid('json');
    const { role, vesselIds } = asked;
    const change = { ...(role && { role }), ...(vesselIds !== undefined && { vesselIds: toVessels(vesselIds) }) };
    const result = await changeMember(actionContext(c, deps, asked), {
      personId,
      expectedVersion: ifMatch.version,
      change,
    });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    const names = await read(c, deps, (tx) => loadMember(tx, personId));
    const { name = null, email = null } = names ?? {};
    return c.json(presentPerson({ ...result.value, name, email }, callerOf(c).actor), 200);
  });
}
