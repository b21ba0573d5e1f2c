/** GET /v1/vessels/{vesselId}/findings/alike: what may be the same as something just found, and why. */
import { ZoneCode } from '@garboard/contract/finding/codes.ts';
import { AlikeFindings } from '@garboard/contract/finding/finding.ts';
import { Id, words } from '@garboard/contract/shared.ts';
import { listFindings } from '@garboard/db/finding/list-findings.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { likeness } from '@garboard/domain/finding/likeness.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, problems, READ_PROBLEMS, routes, SIGNED_IN, VesselPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { presentFinding } from './present-finding.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessels/{vesselId}/findings/alike',
  operationId: 'listAlikeFindings',
  tags: ['Findings'],
  summary: 'Ask what is on record already of something just found',
  description:
    'By the thing, the place and the words, with the reason for each; open ones and ended ones. Somebody decides.',
  security: SIGNED_IN,
  request: {
    params: VesselPath,
    query: z.strictObject({
      zone: ZoneCode,
      what: words(1000).meta({ description: 'What was found.', example: 'Gas hose at the cooker cracked' }),
      itemId: Id.optional(),
    }),
  },
  responses: { 200: json(AlikeFindings, 'What is alike.'), ...READ_PROBLEMS, ...problems('not-found') },
});

/** A vessel's findings over the years stay in the hundreds. */
const MOST_COMPARED = 1000;
const MOST_SHOWN = 10;

export function listAlikeRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const { zone, what, itemId = null } = c.req.valid('query');
    const question = { filter: { vesselId }, order: 'urgency', limit: MOST_COMPARED } as const;
    const found = await read(c, deps, async (tx) => (await loadVessel(tx, vesselId)) && listFindings(tx, question));
    if (!found) return problem(c, 'not-found');
    const alike = found.rows
      .flatMap((view) => ({ view, like: likeness({ zone, what, itemId }, view.finding) }))
      .flatMap(({ view, like }) => (like ? [{ view, ...like }] : []))
      .toSorted((a, b) => b.weight - a.weight)
      .slice(0, MOST_SHOWN);
    const items = alike.map(({ view, because }) => ({
      finding: presentFinding(view, deps.now()),
      because: [...because],
    }));
    return c.json({ items, nextCursor: null }, 200);
  });
}
