/** GET /v1/finding-terms: what the organisation has agreed about findings. */
import { FindingTerms } from '@garboard/contract/finding/remedy.ts';
import { loadTerms } from '@garboard/db/finding/terms.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { problems, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/finding-terms',
  operationId: 'getFindingTerms',
  tags: ['Findings'],
  summary: 'Read what is agreed about findings',
  description: 'House conventions, which an owner or manager may change; no source.',
  security: SIGNED_IN,
  responses: { 200: versioned(FindingTerms, 'The terms.'), ...problems('unauthenticated', 'fault') },
});

export function getTermsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { terms, version } = await read(c, deps, loadTerms);
    tellWritten(c, { version });
    return c.json({ ...terms }, 200);
  });
}
