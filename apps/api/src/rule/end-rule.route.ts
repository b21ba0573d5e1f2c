/** POST /v1/rules/{ruleId}/ending: from a day on there is no such rule. */
import { changeOwnRule } from '@garboard/actions/rule/lay-down-rule.ts';
import { NewOwnRuleEnding } from '@garboard/contract/rule/own-rule.ts';
import { Rule } from '@garboard/contract/rule/rule.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  RulePath,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { kindOfRule, PUBLISHED } from './kind-of-rule.ts';
import { presentOwnRule } from './present-own-rule.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/rules/{ruleId}/ending',
  operationId: 'endRule',
  tags: ['Catalogue'],
  summary: 'End your own rule',
  description:
    'For `owner` and `manager` who see the whole fleet. It counts no more from the day named, today or later or earlier; what applied before stays known, and a later version can take it up again. `If-Match` is required.',
  security: SIGNED_IN,
  request: { params: RulePath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(NewOwnRuleEnding) },
  responses: {
    200: changed(Rule, 'The rule with its versions, the last of which ends it.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function endRuleRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_rules'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { ruleId } = c.req.valid('param');
    const kind = kindOfRule(ruleId);
    if (kind === 'none') return problem(c, 'not-found');
    if (kind === 'published') return problem(c, 'conflict', { detail: PUBLISHED });
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const asked = c.req.valid('json');
    const ending = { ...asked, definition: null, ruleId, expectedVersion: ifMatch.version };
    const result = await changeOwnRule(actionContext(c, deps, asked), ending);
    if (!result.ok) return answerFailure(c, result.failure);
    deps.onRuleChange?.();
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentOwnRule(result.value, callerOf(c).vesselIds), 200);
  });
}
