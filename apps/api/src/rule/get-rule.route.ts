/** GET /v1/rules/{ruleId}: one rule, with its source and what it reads. */
import { Rule } from '@garboard/contract/rule/rule.ts';
import { loadOwnRule } from '@garboard/db/rule/own-rules.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, RulePath, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { kindOfRule } from './kind-of-rule.ts';
import { presentOwnRule } from './present-own-rule.ts';
import { presentRule } from './present-rule.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/rules/{ruleId}',
  operationId: 'getRule',
  tags: ['Catalogue'],
  summary: 'Read one rule',
  description:
    'The rule in words, where it stands, what resets its clock, and the facts, attributes and events that it reads; your own rules with their versions and, for `If-Match`, an `ETag`.',
  security: SIGNED_IN,
  request: { params: RulePath },
  responses: { 200: versioned(Rule, 'The rule.'), ...READ_ONE_PROBLEMS },
});

export function getRuleRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { ruleId } = c.req.valid('param');
    const published = findRule(ruleId);
    if (published) return c.json(presentRule(published), 200);
    const own = kindOfRule(ruleId) === 'own' ? await read(c, deps, (tx) => loadOwnRule(tx, ruleId)) : null;
    if (!own) return problem(c, 'not-found');
    tellWritten(c, { version: own.version });
    return c.json(presentOwnRule(own, callerOf(c).vesselIds), 200);
  });
}
