/** GET /v1/findings/{findingId}/entries: its whole story, from the first day on. */
import { FindingEntryPage } from '@garboard/contract/finding/finding.ts';
import { listEntries } from '@garboard/db/finding/entries.ts';
import { loadFinding } from '@garboard/db/finding/findings.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { FindingPath, page, problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { IdKey, pageQuery } from '../request/query-params.ts';
import { presentEntry } from './present-finding.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/findings/{findingId}/entries',
  operationId: 'listFindingEntries',
  tags: ['Findings'],
  summary: 'List what was seen, said and done about a finding',
  description: 'In the order in which it was recorded. Entries are only ever added.',
  security: SIGNED_IN,
  request: { params: FindingPath, query: z.strictObject(pageQuery) },
  responses: { 200: page(FindingEntryPage, 'A page of entries.'), ...READ_PROBLEMS, ...problems('not-found') },
});

export function listEntriesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { findingId } = c.req.valid('param');
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'entries', findingId };
    const start = readCursor(cursor, question, IdKey);
    if (!start.ok) return badCursor(c);
    const found = await read(
      c,
      deps,
      async (tx) => (await loadFinding(tx, findingId)) && listEntries(tx, findingId, limit, start.after),
    );
    if (!found) return problem(c, 'not-found');
    const last = found.more ? found.rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { id: last.id });
    return c.json({ items: found.rows.map(presentEntry), nextCursor: next }, 200);
  });
}
