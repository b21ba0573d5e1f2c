/** PATCH /v1/organisation: its name and time zone. */
import { changeOrganisation } from '@garboard/actions/organisation/change-organisation.ts';
import { Organisation, OrganisationChange } from '@garboard/contract/organisation/organisation.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { given } from '../request/given.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { access } from './access.ts';

const route = createRoute({
  method: 'patch',
  path: '/v1/organisation',
  operationId: 'changeOrganisation',
  tags: ['Organisations'],
  summary: 'Change the organisation’s name or time zone',
  description: 'For `owner`. Vessels keep their own time zones. `If-Match` is required.',
  security: SIGNED_IN,
  request: { headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(OrganisationChange) },
  responses: {
    200: changed(Organisation, 'The organisation as changed.'),
    ...WRITE_PROBLEMS,
    ...problems('stale', 'if-match-required'),
  },
});

export function changeOrganisationRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_organisation'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const asked = c.req.valid('json');
    const result = await changeOrganisation(actionContext(c, deps, asked), {
      expectedVersion: ifMatch.version,
      change: given(asked),
    });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(result.value, 200);
  });
}
