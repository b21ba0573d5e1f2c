/** POST /v1/rules: a rule of the organisation's own. */
import { addOwnRule } from '@garboard/actions/rule/lay-down-rule.ts';
import { NewOwnRule } from '@garboard/contract/rule/own-rule.ts';
import { Rule } from '@garboard/contract/rule/rule.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { versionOf } from './own-rule-input.ts';
import { presentOwnRule } from './present-own-rule.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/rules',
  operationId: 'addRule',
  tags: ['Catalogue'],
  summary: 'Add a rule of your own',
  description:
    'For `owner` and `manager` who see the whole fleet. It gives dates like a published rule, under a weight that is never law, from the day it takes effect. What it touches is worked out in the background: `/v1/rule-changes/{changeId}` says how far that is.',
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewOwnRule) },
  responses: { 201: created(Rule, 'The rule, with its first version.'), ...WRITE_PROBLEMS },
});

export function addRuleRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_rules'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const asked = c.req.valid('json');
    const result = await addOwnRule(actionContext(c, deps, asked), versionOf(asked));
    if (!result.ok) return answerFailure(c, result.failure);
    deps.onRuleChange?.();
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/rules/${value.id}`, version: value.version, replayed });
    return c.json(presentOwnRule(value, callerOf(c).vesselIds), 201);
  });
}
