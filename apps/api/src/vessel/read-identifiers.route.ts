/** POST /v1/identifiers/read: what a vessel's identifiers say. Nothing is written. */
import { ReadIdentifiers, ReadIdentifiersRequest } from '@garboard/contract/vessel/identifier.ts';
import { crossCheck } from '@garboard/domain/vessel/identifier/cross-check.ts';
import { decodeIdentifiers } from '@garboard/domain/vessel/identifier/identifiers.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { BODY_PROBLEMS, body, IDEMPOTENCY_KEY, json, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { jsonBody } from '../request/json-body.ts';
import { presentReadings } from './present-identifiers.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/identifiers/read',
  operationId: 'readIdentifiers',
  tags: ['Vessels'],
  summary: 'Read the identifiers of a vessel',
  description:
    'For every role. Decodes each and holds them against each other. Doubt never refuses: a number cannot be one only where its check digit or its form makes it impossible. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect.',
  'x-reads-only': true,
  security: SIGNED_IN,
  request: {
    headers: z.object(IDEMPOTENCY_KEY),
    body: body(ReadIdentifiersRequest),
  },
  responses: { 200: json(ReadIdentifiers, 'What they say.'), ...BODY_PROBLEMS },
});

export function readIdentifiersRoute(deps: Deps) {
  const middleware = [access(deps, 'read'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, (c) => {
    const { builtYear, flagCountry, ...texts } = c.req.valid('json');
    const identifiers = decodeIdentifiers(texts);
    const doubts = [...crossCheck(identifiers, { builtYear, flagCountry })];
    return c.json({ identifiers: presentReadings(identifiers), doubts }, 200);
  });
}
