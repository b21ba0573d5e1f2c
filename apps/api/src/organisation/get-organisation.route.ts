/** GET /v1/organisation: the one the credential is at. */
import { Organisation } from '@garboard/contract/organisation/organisation.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { problems, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { read } from '../request/action-context.ts';
import { etagOf } from '../request/etag.ts';
import { access } from './access.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/organisation',
  operationId: 'getOrganisation',
  tags: ['Organisations'],
  summary: 'Read the organisation you are at',
  description: 'Its name and its time zone.',
  security: SIGNED_IN,
  responses: {
    200: versioned(Organisation, 'The organisation.'),
    ...problems('unauthenticated', 'forbidden', 'fault'),
  },
});

export function getOrganisationRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const organisation = await read(c, deps, loadOrganisation);
    c.header('etag', etagOf(organisation.version));
    return c.json(organisation, 200);
  });
}
