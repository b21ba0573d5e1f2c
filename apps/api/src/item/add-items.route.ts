/** POST /v1/vessels/{vesselId}/items/batch: puts things aboard on her list, all of them or none. */
import { addItems } from '@garboard/actions/item/add-items.ts';
import { AddedItems, NewItems } from '@garboard/contract/item/item.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  IDEMPOTENCY_KEY,
  listed,
  problems,
  routes,
  SIGNED_IN,
  VesselPath,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { itemInput } from './item-input.ts';
import { presentItem } from './present-item.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/items/batch',
  operationId: 'addItems',
  tags: ['Items'],
  summary: 'Add many things to a vessel’s list at once',
  description:
    'For `owner` and `manager`. At most 100, in one transaction: all of them or none. Answers in the order asked. `GET /v1/vessel-templates` has rows to start from.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewItems) },
  responses: { 201: listed(AddedItems, 'The items as added.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function addItemsRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const asked = c.req.valid('json');
    const result = await addItems(actionContext(c, deps, asked), { vesselId, items: asked.items.map(itemInput) });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { location: `/v1/vessels/${vesselId}/items`, replayed: result.replayed });
    return c.json({ items: result.value.map(presentItem) }, 201);
  });
}
