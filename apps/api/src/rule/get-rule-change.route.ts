/** GET /v1/rule-changes/{changeId}: how far the change that a version of an own rule makes has been worked through. */
import { RuleChange } from '@garboard/contract/rule/own-rule.ts';
import { loadRuleChange } from '@garboard/db/rule/rule-changes.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, READ_ONE_PROBLEMS, RuleChangePath, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { presentRuleChange } from './present-own-rule.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/rule-changes/{changeId}',
  operationId: 'getRuleChange',
  tags: ['Catalogue'],
  summary: 'Ask how far a change of your own rule is',
  description:
    'Dates that it has not come to yet are still those of before, unless something was recorded of their thing meanwhile.',
  security: SIGNED_IN,
  request: { params: RuleChangePath },
  responses: { 200: json(RuleChange, 'The change.'), ...READ_ONE_PROBLEMS },
});

export function getRuleChangeRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { changeId } = c.req.valid('param');
    const change = await read(c, deps, (tx) => loadRuleChange(tx, changeId));
    return change ? c.json(presentRuleChange(change), 200) : problem(c, 'not-found');
  });
}
