/** POST /v1/shared/reports and /v1/shared/answers: what an outsider does by a link, once each. */
import { answerByLink } from '@garboard/actions/share/answer-by-link.ts';
import { reportByLink } from '@garboard/actions/share/report-by-link.ts';
import { SharedAnswer, SharedDone, SharedReport } from '@garboard/contract/share/share-link.ts';
import { readsAs } from '@garboard/domain/finding/words.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ApiEnv, Deps } from '../deps.ts';
import { ANYBODY, body, IDEMPOTENCY_KEY, json, problems, routes } from '../openapi/declare.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { jsonBody } from '../request/json-body.ts';

const TAGS = ['Links for outsiders'];
const common = {
  method: 'post',
  'x-secret-in-body': true,
  security: ANYBODY,
  responses: {
    200: json(SharedDone, 'How it stands now.'),
    ...problems('malformed-json', 'not-found', 'conflict', 'too-large', 'unsupported-media-type', 'invalid', 'fault'),
  },
} as const;
const ONCE =
  'A repeat is told by how it stands: 409, so `Idempotency-Key` has no effect. Unknown, revoked and run out look alike.';

const report = createRoute({
  ...common,
  tags: TAGS,
  path: '/v1/shared/reports',
  operationId: 'reportByLink',
  summary: 'Report work by a link',
  description: `For a yard that has the link: work that it was given is done, with a photograph if it likes. Somebody of the house looks and verifies. ${ONCE}`,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(SharedReport) },
});

const answer = createRoute({
  ...common,
  tags: TAGS,
  path: '/v1/shared/answers',
  operationId: 'answerByLink',
  summary: 'Say yes or no to an estimate by a link',
  description: `For the owner who has the link, in the very words that were shown; it is written down with name and day, and decides nothing by itself. ${ONCE}`,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(SharedAnswer) },
});

export function reportByLinkRoute(deps: Deps) {
  return routes().openapi({ ...report, middleware: [...jsonBody] }, async (c) => {
    const { token, photograph, ...said } = c.req.valid('json');
    const picture = photograph === undefined ? null : Buffer.from(photograph, 'base64');
    const result = await reportByLink(byLink(c, deps, token), deps.files, { ...said, photograph: picture });
    if (result.ok) return c.json({ reads: readsAs(result.value.finding) }, 200);
    return refuse(c, result.failure);
  });
}

export function answerByLinkRoute(deps: Deps) {
  return routes().openapi({ ...answer, middleware: [...jsonBody] }, async (c) => {
    const { token, words = null, ...said } = c.req.valid('json');
    const result = await answerByLink(byLink(c, deps, token), { ...said, words });
    if (result.ok) return c.json({ reads: readsAs(result.value.finding) }, 200);
    return refuse(c, result.failure);
  });
}

function byLink(c: Context<ApiEnv>, { pools, now }: Deps, text: string) {
  c.header('cache-control', 'no-store');
  return { db: pools.app, text, now: now(), requestId: c.var.requestId };
}

type Refused = Extract<Awaited<ReturnType<typeof answerByLink>>, { ok: false }>['failure'];

/** A link has no role and names no version: what it may not do does not exist for it. */
function refuse(c: Context<ApiEnv>, failure: Refused) {
  switch (failure.kind) {
    case 'forbidden':
    case 'not_found':
    case 'key_reused':
      return problem(c, 'not-found');
    case 'stale':
      return problem(c, 'conflict', { detail: 'Somebody wrote about it at the same moment. Look again.' });
    case 'conflict':
    case 'invalid':
      return answerFailure(c, failure);
  }
}
