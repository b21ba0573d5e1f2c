/** PUT /v1/season: says when the organisation's season is. */
import { setSeason } from '@garboard/actions/organisation/set-season.ts';
import { OwnSeason } from '@garboard/contract/organisation/season.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, changed, IF_MATCH, problems, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { access } from './access.ts';

const route = createRoute({
  method: 'put',
  path: '/v1/season',
  operationId: 'setSeason',
  tags: ['Due list'],
  summary: 'Say when the season is',
  description:
    'For `owner` and `manager`. `null` says nothing of one. It moves no date of a rule: it is drawn behind them. Findings to be dealt with this season are due on its last day. `If-Match` is required.',
  security: SIGNED_IN,
  request: { headers: z.object(IF_MATCH), body: body(OwnSeason) },
  responses: {
    200: changed(OwnSeason, 'The season as set.'),
    ...WRITE_PROBLEMS,
    ...problems('stale', 'if-match-required'),
  },
});

export function setSeasonRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { season } = c.req.valid('json');
    const result = await setSeason(actionContext(c, deps, { season }), { season, expectedVersion: ifMatch.version });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json({ season: result.value.season }, 200);
  });
}
