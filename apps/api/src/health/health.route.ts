/** GET /healthz and /readyz: whether the program runs, and whether it can do its work. */
import { Health } from '@garboard/contract/health.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { ANYBODY, json, problems, routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { isReady } from './is-ready.ts';

const healthz = createRoute({
  method: 'get',
  path: '/healthz',
  operationId: 'getHealth',
  tags: ['Service'],
  summary: 'Ask whether the program runs',
  description: 'Answers without looking at the database. For a supervisor that restarts what hangs.',
  security: ANYBODY,
  responses: { 200: json(Health, 'It runs.') },
});

const readyz = createRoute({
  method: 'get',
  path: '/readyz',
  operationId: 'getReadiness',
  tags: ['Service'],
  summary: 'Ask whether the program can do its work',
  description: 'The database answers and every migration is applied. For whatever sends requests here.',
  security: ANYBODY,
  responses: { 200: json(Health, 'It is ready.'), ...problems('not-ready') },
});

export function healthRoute(deps: Deps) {
  const fine = { status: 'ok', version: deps.version } as const;
  return routes()
    .openapi(healthz, (c) => c.json(fine, 200))
    .openapi(readyz, async (c) => ((await isReady(deps)) ? c.json(fine, 200) : problem(c, 'not-ready')));
}
