/** POST /v1/share-links/{linkId}/revocation: it shows nothing from now on. */
import { revokeLink } from '@garboard/actions/share/revoke-share-link.ts';
import { ShareLink, ShareLinkRevocation } from '@garboard/contract/share/share-link.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  ShareLinkPath,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentLink } from './present-share.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/share-links/{linkId}/revocation',
  operationId: 'revokeShareLink',
  tags: ['Links for outsiders'],
  summary: 'Revoke a link',
  description: 'Whoever opens it next sees what they would see of one that never was. `If-Match` is required.',
  security: SIGNED_IN,
  request: {
    params: ShareLinkPath,
    headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }),
    body: body(ShareLinkRevocation),
  },
  responses: {
    200: changed(ShareLink, 'The link as revoked.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function revokeShareLinkRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'share'), ...jsonBody] }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { linkId } = c.req.valid('param');
    const { reason = null } = c.req.valid('json');
    const wanted = { linkId, expectedVersion: ifMatch.version, reason };
    const result = await revokeLink(actionContext(c, deps, { reason }), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentLink(result.value), 200);
  });
}
