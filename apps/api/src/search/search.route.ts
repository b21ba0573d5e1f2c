/** GET /v1/search: vessels, things aboard and rules that answer to some words. */
import { SearchAnswer } from '@garboard/contract/search/search.ts';
import { words } from '@garboard/contract/shared.ts';
import { type FoundItem, findItems, findVessels } from '@garboard/db/search/find-by-words.ts';
import { rulesAnswering } from '@garboard/domain/rule/find-rules.ts';
import type { Rule } from '@garboard/domain/rule/rule.ts';
import { RULES } from '@garboard/domain/rule/rules.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { wholeNumber } from '../request/query-params.ts';
import { withoutNulls } from '../request/without-nulls.ts';

const q = words(80).meta({
  description: 'Words, or the beginnings of words: each must be answered to. Numbers also without their strokes.',
  example: 'kittiwake raft',
});
const limit = wholeNumber({ min: 1, max: 20 })
  .default(6)
  .meta({ description: 'How many of each, 1 to 20; 6 if not given.', default: 6, example: 6 });

const route = createRoute({
  method: 'get',
  path: '/v1/search',
  operationId: 'searchRegister',
  tags: ['Vessels'],
  summary: 'Find a vessel, a thing aboard or a rule',
  description:
    'A vessel by name, type, home port and identifiers; a thing by what it is called, kind, place, maker, model and serial number, and its vessel’s words besides; a published rule by what it asks and where it stands. Whole words come first.',
  security: SIGNED_IN,
  request: { query: z.strictObject({ q, limit }) },
  responses: { 200: json(SearchAnswer, 'What answers to the words.'), ...READ_PROBLEMS },
});

export function searchRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { q: asked, limit: most } = c.req.valid('query');
    const found = await read(c, deps, async (tx) => ({
      vessels: await findVessels(tx, asked, most),
      things: await findItems(tx, asked, most),
    }));
    const rules = rulesAnswering(RULES, asked).slice(0, most).map(presentFound);
    return c.json({ vessels: found.vessels.map(withoutNulls), things: found.things.map(presentItem), rules }, 200);
  });
}

function presentItem({ vesselId, vesselName, ...item }: FoundItem): SearchAnswer['things'][number] {
  return { ...withoutNulls(item), vessel: { id: vesselId, name: vesselName } };
}

function presentFound({ id, inWords, source }: Rule): SearchAnswer['rules'][number] {
  return { id, inWords, publication: source.publication, clause: source.clause };
}
