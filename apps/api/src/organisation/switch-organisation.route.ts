/** POST /v1/session/organisation: takes the session to another organisation. */
import { switchOrganisation } from '@garboard/actions/organisation/switch-organisation.ts';
import { Organisation, SwitchTo } from '@garboard/contract/organisation/organisation.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { BODY_PROBLEMS, body, IDEMPOTENCY_KEY, PERSON, problems, routes, versioned } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { personContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { personAccess } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/session/organisation',
  operationId: 'switchOrganisation',
  tags: ['Session'],
  summary: 'Go to another organisation',
  description:
    'One you belong to; from now on the session reads and writes there. To repeat it is harmless, so `Idempotency-Key` has no effect.',
  security: PERSON,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(SwitchTo) },
  responses: {
    200: versioned(Organisation, 'The organisation you are at now.'),
    ...BODY_PROBLEMS,
    ...problems('not-found'),
  },
});

export function switchOrganisationRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [personAccess(deps), ...jsonBody] }, async (c) => {
    const { organisationId } = c.req.valid('json');
    const result = await switchOrganisation(personContext(c, deps, null), organisationId);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version });
    return c.json(result.value, 200);
  });
}
