/** GET /v1/rules/{ruleId}: one rule, with its source and what it reads. */
import { Rule } from '@garboard/contract/rule/rule.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, READ_ONE_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { presentRule } from './present-rule.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/rules/{ruleId}',
  operationId: 'getRule',
  tags: ['Catalogue'],
  summary: 'Read one rule',
  description:
    'The rule in words, where it stands, what resets its clock, and the facts, attributes and events that it reads.',
  security: SIGNED_IN,
  request: { params: z.object({ ruleId: z.string().meta({ description: 'An `id` of `/v1/rules`.' }) }) },
  responses: { 200: json(Rule, 'The rule.'), ...READ_ONE_PROBLEMS },
});

export function getRuleRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, (c) => {
    const rule = findRule(c.req.valid('param').ruleId);
    return rule ? c.json(presentRule(rule), 200) : problem(c, 'not-found');
  });
}
