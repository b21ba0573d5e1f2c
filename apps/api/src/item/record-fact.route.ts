/** POST /v1/items/{itemId}/facts: states a dated fact; what follows from it is right when this answers. */

import { recordFact } from '@garboard/actions/item/record-fact.ts';
import { NewFact } from '@garboard/contract/item/fact.ts';
import { RecordedFact } from '@garboard/contract/item/recorded-fact.ts';
import { dayOfText } from '@garboard/domain/calendar/day.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  created,
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
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentFact, toFactInput } from './present-fact.ts';
import { byOverdueAfter, presentObligation } from './present-obligation.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/items/{itemId}/facts',
  operationId: 'recordFact',
  tags: ['Items'],
  summary: 'Record a fact about an item',
  description: [
    'For every role but `viewer`. Facts are only ever added; a wrong one is struck out by another that names it in `corrects`, and with `retracts` by one that puts nothing in its place.',
    'A fact is an addition, so `If-Match` is not required; where it is sent, it is honoured: 412 when the item has changed since.',
    'The answer carries the item’s obligations as they stand after the fact, with their reasoning; its `ETag` is the item’s new version.',
  ].join(' '),
  security: SIGNED_IN,
  request: { params: ItemPath, headers: z.object({ ...IDEMPOTENCY_KEY, ...IF_MATCH }), body: body(NewFact) },
  responses: {
    201: created(RecordedFact, 'The fact as recorded, and what follows from it.'),
    ...WRITE_PROBLEMS,
    ...problems('not-found', 'stale'),
  },
});

export function recordFactRoute(deps: Deps) {
  const middleware = [access(deps, 'record_facts'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { itemId } = c.req.valid('param');
    const fact = c.req.valid('json');
    const ifMatch = readIfMatch(c.req.header('if-match'));
    const expected = ifMatch.kind === 'version' ? { expectedVersion: ifMatch.version } : {};
    const result = await recordFact(actionContext(c, deps, fact), { itemId, ...expected, fact: toFactInput(fact) });
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    const asOf = dayOfText(value.asOf);
    tellWritten(c, { location: `/v1/items/${itemId}/facts`, version: value.item.version, replayed });
    return c.json(
      {
        fact: presentFact({ ...value.fact, struckOutBy: null }),
        asOf: value.asOf,
        obligations: [...value.obligations].sort(byOverdueAfter).map((each) => presentObligation(each, asOf)),
        doubts: [...value.doubts],
      },
      201,
    );
  });
}
