/** GET /v1/rules: the published rules with their sources, and the organisation's own. */
import { WeightCode } from '@garboard/contract/item/obligation.ts';
import { RulePage } from '@garboard/contract/rule/rule.ts';
import { SchemeCode } from '@garboard/contract/vessel/vessel.ts';
import { listOwnRules } from '@garboard/db/rule/own-rules.ts';
import { RULES } from '@garboard/domain/rule/rules.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { pageQuery } from '../request/query-params.ts';
import { KnownKind } from './known-kind.ts';
import { pageOfCatalogue } from './page-of-catalogue.ts';
import { presentOwnRule } from './present-own-rule.ts';
import { presentRule } from './present-rule.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/rules',
  operationId: 'listRules',
  tags: ['Catalogue'],
  summary: 'List the rules',
  description:
    'Each with its publication and clause, how far that was checked, and what it reads. A rule shown as common practice has no source. Your own rules come last, ended ones too.',
  security: SIGNED_IN,
  request: {
    query: z.strictObject({
      scheme: SchemeCode.optional(),
      kind: KnownKind.optional(),
      weight: WeightCode.optional(),
      own: z
        .enum(['true', 'false'])
        .optional()
        .meta({ description: '`true`: only your own. `false`: only those that are published.' }),
      ...pageQuery,
    }),
  },
  responses: { 200: page(RulePage, 'A page of rules.'), ...READ_PROBLEMS },
});

export function listRulesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, scheme, kind, weight, own } = c.req.valid('query');
    const question = { list: 'rules', scheme, kind, weight, own };
    const start = readCursor(cursor, question, z.string());
    const { vesselIds } = callerOf(c);
    const ours = own === 'false' ? [] : await read(c, deps, listOwnRules);
    const all = [
      ...(own === 'true' ? [] : RULES.map(presentRule)),
      ...ours.map((rule) => presentOwnRule(rule, vesselIds)),
    ];
    const asked = all.filter(
      (rule) =>
        (!scheme || rule.scheme === scheme) &&
        (!kind || rule.kinds.includes(kind)) &&
        (!weight || rule.weight === weight),
    );
    const found = start.ok && pageOfCatalogue(asked, limit, start.after);
    if (!found) return badCursor(c);
    return c.json({ items: [...found.entries], nextCursor: nextCursor(c, question, found.last) }, 200);
  });
}
