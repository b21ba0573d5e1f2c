/** POST /v1/vessels/{vesselId}/items: puts a thing aboard on her list. */
import { addItem } from '@garboard/actions/item/add-item.ts';
import { Item, NewItem } from '@garboard/contract/item/item.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  created,
  IDEMPOTENCY_KEY,
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
  path: '/v1/vessels/{vesselId}/items',
  operationId: 'addItem',
  tags: ['Items'],
  summary: 'Add a thing to a vessel’s list',
  description: 'For `owner` and `manager`. Its obligations stand from the start, without a date until facts come.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewItem) },
  responses: { 201: created(Item, 'The item as added.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function addItemRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const item = c.req.valid('json');
    const result = await addItem(actionContext(c, deps, item), { vesselId, ...itemInput(item) });
    if (!result.ok) return answerFailure(c, result.failure);
    const { id, version } = result.value.item;
    tellWritten(c, { location: `/v1/items/${id}`, version, replayed: result.replayed });
    return c.json(presentItem(result.value.item), 201);
  });
}
