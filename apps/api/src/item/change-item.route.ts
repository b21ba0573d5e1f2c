/** PATCH /v1/items/{itemId}: changes what is written of it. */
import { changeItem } from '@garboard/actions/item/change-item.ts';
import { Item, ItemChange } from '@garboard/contract/item/item.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  ItemPath,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { given } from '../request/given.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentItem } from './present-item.ts';

const route = createRoute({
  method: 'patch',
  path: '/v1/items/{itemId}',
  operationId: 'changeItem',
  tags: ['Items'],
  summary: 'Change what is written of an item',
  description:
    'For `owner` and `manager`. What is absent stays; `null` takes it away. `If-Match` is required. Dates are facts and are not changed here.',
  security: SIGNED_IN,
  request: { params: ItemPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(ItemChange) },
  responses: {
    200: changed(Item, 'The item as changed.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'stale', 'if-match-required'),
  },
});

export function changeItemRoute(deps: Deps) {
  const middleware = [access(deps, 'keep_register'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { itemId } = c.req.valid('param');
    const change = c.req.valid('json');
    const result = await changeItem(actionContext(c, deps, change), {
      itemId,
      expectedVersion: ifMatch.version,
      change: given(change),
    });
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version, replayed: result.replayed });
    return c.json(presentItem(result.value), 200);
  });
}
