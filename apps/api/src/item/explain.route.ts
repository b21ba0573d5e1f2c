/** POST /v1/due-dates/explain: the rules engine on facts that are not stored. Nothing is written. */
import { Explained, ExplainRequest } from '@garboard/contract/item/explain.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { type Day, dayOfText, formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { BODY_PROBLEMS, body, IDEMPOTENCY_KEY, json, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { byOverdueAfter, presentObligation } from './present-obligation.ts';
import { readUnstored } from './unstored-history.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/due-dates/explain',
  operationId: 'explainDueDates',
  tags: ['Due list'],
  summary: 'Work out due dates from facts that are not stored',
  description:
    'For every role. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect. Each rule in `/v1/rules` lists the facts, attributes and events that it reads.',
  'x-reads-only': true,
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(ExplainRequest) },
  responses: { 200: json(Explained, 'What the rules make of these facts.'), ...BODY_PROBLEMS },
});

export function explainRoute(deps: Deps) {
  const middleware = [access(deps, 'read'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const asked = c.req.valid('json');
    const timeZone = asked.vessel?.timeZone ?? (await read(c, deps, loadOrganisation)).timeZone;
    const today = dayInZone(deps.now(), timeZone);
    const day = asked.asOf === undefined ? today : dayOfText(asked.asOf);
    const stated = readUnstored(asked, later(day, today));
    if (!stated.ok) return problem(c, 'invalid', { errors: stated.errors });
    const cut = { asOf: day, ...(asked.knownAt !== undefined && { knownAt: asked.knownAt }) };
    const obligations = workOutObligations(stated.item, stated.vessel, cut);
    const items = [...obligations].sort(byOverdueAfter).map((each) => presentObligation(each, day));
    return c.json({ asOf: formatDay(day), items, doubts: [...stated.doubts], nextCursor: null }, 200);
  });
}

const later = (a: Day, b: Day): Day => Math.max(a, b) as Day;
