/** PUT /v1/rules/{ruleId}: another version of an own rule, from a day on. */
import { changeOwnRule } from '@garboard/actions/rule/lay-down-rule.ts';
import { NewOwnRule } from '@garboard/contract/rule/own-rule.ts';
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
import { versionOf } from './own-rule-input.ts';
import { presentOwnRule } from './present-own-rule.ts';

const route = createRoute({
  method: 'put',
  path: '/v1/rules/{ruleId}',
  operationId: 'changeRule',
  tags: ['Catalogue'],
  summary: 'Lay down another version of your own rule',
  description:
    'For `owner` and `manager` who see the whole fleet. The body is the whole text of the version, with the day from which it counts; what applied before stays known. `If-Match` is required. A published rule cannot be changed.',
  security: SIGNED_IN,
  request: { params: RulePath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(NewOwnRule) },
  responses: {
    200: changed(Rule, 'The rule with its versions.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
  },
});

export function changeRuleRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_rules'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { ruleId } = c.req.valid('param');
    const kind = kindOfRule(ruleId);
    if (kind === 'none') return problem(c, 'not-found');
    if (kind === 'published') return problem(c, 'conflict', { detail: PUBLISHED });
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const asked = c.req.valid('json');
    const version = { ...versionOf(asked), ruleId, expectedVersion: ifMatch.version };
    const result = await changeOwnRule(actionContext(c, deps, asked), version);
    if (!result.ok) return answerFailure(c, result.failure);
    deps.onRuleChange?.();
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentOwnRule(result.value, callerOf(c).vesselIds), 200);
  });
}
