/** GET /v1/share-links/{linkId}. */
import { ShareLink } from '@garboard/contract/share/share-link.ts';
import { loadShareLink } from '@garboard/db/share/share-links.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, routes, ShareLinkPath, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { etagOf } from '../request/etag.ts';
import { presentLink } from './present-share.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/share-links/{linkId}',
  operationId: 'getShareLink',
  tags: ['Links for outsiders'],
  summary: 'Read one link',
  description: 'What it shows, until when, and how often it was looked at; never its text. For `owner` and `manager`.',
  security: SIGNED_IN,
  request: { params: ShareLinkPath },
  responses: { 200: versioned(ShareLink, 'The link.'), ...READ_ONE_PROBLEMS },
});

export function getShareLinkRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'share') }, async (c) => {
    const link = await read(c, deps, (tx) => loadShareLink(tx, c.req.valid('param').linkId));
    if (!link) return problem(c, 'not-found');
    c.header('etag', etagOf(link.version));
    return c.json(presentLink(link), 200);
  });
}
