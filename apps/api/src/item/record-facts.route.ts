/** POST /v1/facts: many facts in one request, each with an answer of its own. */

import { type RowResult, recordFacts } from '@garboard/actions/item/record-facts.ts';
import { type FactOutcome, FactOutcomes, NewFacts } from '@garboard/contract/item/facts-at-once.ts';
import { dayOfText } from '@garboard/domain/calendar/day.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, IDEMPOTENCY_KEY, routes, SIGNED_IN, settled, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure, problemOf } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentFact, toFactInput } from './present-fact.ts';
import { byOverdueAfter, presentObligation } from './present-obligation.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/facts',
  operationId: 'recordFacts',
  tags: ['Items'],
  summary: 'Record many facts at once',
  description: [
    'For every role but `viewer`. At most 200, each in a transaction of its own: one that is refused does not take the others with it.',
    'Answers 200 with a row for each in the order asked, recorded or refused and why; a body that does not fit its schema is refused whole, before anything is recorded.',
    'With an `Idempotency-Key`, a repeat does what was left undone and nothing twice.',
  ].join(' '),
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewFacts) },
  responses: { 200: settled(FactOutcomes, 'What became of each.'), ...WRITE_PROBLEMS },
});

export function recordFactsRoute(deps: Deps) {
  const middleware = [access(deps, 'record_facts'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const { items } = c.req.valid('json');
    const rows = items.map(({ itemId, fact }) => ({ itemId, fact: toFactInput(fact) }));
    const result = await recordFacts(actionContext(c, deps, items), rows);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { replayed: result.replayed });
    const outcomes = result.value.map((each, index) => presentOutcome(each, rows[index]?.itemId ?? ''));
    return c.json({ items: outcomes }, 200);
  });
}

function presentOutcome(result: RowResult, itemId: string): FactOutcome {
  if (!result.ok) return { result: 'refused', itemId, problem: problemOf(result.failure) };
  const { fact, obligations, doubts, asOf } = result.value;
  const all = [...obligations].sort(byOverdueAfter).map((each) => presentObligation(each, dayOfText(asOf)));
  const dates = all.map(({ ruleId, duty, action, dueOn, standing }) => ({
    ...{ ruleId, duty, words: action.words, standing },
    ...(dueOn && { dueOn }),
  }));
  return {
    ...{ result: 'recorded', itemId, dates, doubts: [...doubts] },
    fact: presentFact({ ...fact, struckOutBy: null }),
  };
}
