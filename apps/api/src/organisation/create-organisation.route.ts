/** POST /v1/organisations: founds an organisation. */
import { foundOrganisation } from '@garboard/actions/organisation/found-organisation.ts';
import { NewOrganisation, Organisation } from '@garboard/contract/organisation/organisation.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, PERSON, routes, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { personContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { personAccess } from './access.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/organisations',
  operationId: 'createOrganisation',
  tags: ['Organisations'],
  summary: 'Found an organisation',
  description: 'For a person who has signed in. You own it, and your session is at it. Names need not be unique.',
  security: PERSON,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewOrganisation) },
  responses: { 201: created(Organisation, 'The organisation.'), ...WRITE_PROBLEMS },
});

export function createOrganisationRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [personAccess(deps), ...jsonBody] }, async (c) => {
    const founding = c.req.valid('json');
    const result = await foundOrganisation(personContext(c, deps, founding), founding);
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: '/v1/organisation', version: value.version, replayed: replayed ?? false });
    return c.json(value, 201);
  });
}
