/** GET /v1/items/{itemId}/obligations: what the rules make of its facts, and why. */
import { ObligationList } from '@garboard/contract/item/obligation.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import { loadItemHistories, loadVesselHistory } from '@garboard/db/item/load-histories.ts';
import { listObligations } from '@garboard/db/item/obligations.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { loadVessel } from '@garboard/db/vessel/vessels.ts';
import { workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ItemPath, json, problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { type AsAt, asAt } from '../request/as-at.ts';
import { asAtQuery } from '../request/query-params.ts';
import { byOverdueAfter, presentObligation } from './present-obligation.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/items/{itemId}/obligations',
  operationId: 'listObligations',
  tags: ['Items'],
  summary: 'Read what is due on an item, and why',
  description:
    'By `overdueAfter`; what has no date to go by comes last and says what is missing. For a day gone by, or with `knownAt`, it is worked out anew from the facts.',
  security: SIGNED_IN,
  request: { params: ItemPath, query: z.strictObject(asAtQuery) },
  responses: { 200: json(ObligationList, 'Every obligation of the item.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listObligationsRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { itemId } = c.req.valid('param');
    const asked = c.req.valid('query');
    const found = await read(c, deps, async (tx) => {
      const item = await loadItem(tx, itemId);
      const vessel = item && (await loadVessel(tx, item.vesselId));
      if (!item || !vessel) return null;
      const at = await asAt(tx, asked, deps.now(), vessel.timeZone);
      return {
        at,
        obligations: at.cut ? await workOut(tx, vessel.id, itemId, at.cut) : await listObligations(tx, itemId),
      };
    });
    if (!found) return problem(c, 'not-found');
    const { at, obligations } = found;
    const items = [...obligations].sort(byOverdueAfter).map((each) => presentObligation(each, at.day));
    return c.json({ asOf: at.text, items, nextCursor: null }, 200);
  });
}

async function workOut(tx: Scoped, vesselId: string, itemId: string, cut: NonNullable<AsAt['cut']>) {
  const [loaded] = await loadItemHistories(tx, vesselId, [itemId]);
  return loaded ? workOutObligations(loaded.history, await loadVesselHistory(tx, vesselId, cut), cut) : [];
}
