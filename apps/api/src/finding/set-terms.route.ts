/** PUT /v1/finding-terms: changes what is agreed about findings. */
import { setTerms } from '@garboard/actions/finding/set-terms.ts';
import { FindingTerms } from '@garboard/contract/finding/remedy.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, changed, IF_MATCH, problems, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';

const route = createRoute({
  method: 'put',
  path: '/v1/finding-terms',
  operationId: 'setFindingTerms',
  tags: ['Findings'],
  summary: 'Change what is agreed about findings',
  description:
    'For `owner` and `manager`. The dates that hang on it are right when this answers. `If-Match` is required.',
  security: SIGNED_IN,
  request: { headers: z.object(IF_MATCH), body: body(FindingTerms) },
  responses: {
    200: changed(FindingTerms, 'The terms as set.'),
    ...WRITE_PROBLEMS,
    ...problems('stale', 'if-match-required'),
  },
});

export function setTermsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'put_off_findings'), ...jsonBody] }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const terms = c.req.valid('json');
    const result = await setTerms(actionContext(c, deps, terms), { terms, expectedVersion: ifMatch.version });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json({ ...result.value.terms }, 200);
  });
}
