/** GET /v1/api-keys: the keys that programs have, and had. */
import { ApiKeyPage } from '@garboard/contract/api-key/api-key.ts';
import { listApiKeys } from '@garboard/db/api-key/api-keys.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentKey } from './present-key.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/api-keys',
  operationId: 'listApiKeys',
  tags: ['Keys'],
  summary: 'List the keys of programs',
  description: 'The latest first, with those that are revoked or have run out. For `owner` and `manager`.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(ApiKeyPage, 'A page of keys.'), ...READ_PROBLEMS },
});

export function listKeysRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'keep_keys') }, async (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'api-keys' };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const { rows, more } = await read(c, deps, (tx) => listApiKeys(tx, limit, start.after));
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: rows.map(presentKey), nextCursor: next }, 200);
  });
}
