/** POST /v1/safety-notices/matches: what a notice would bear on. Nothing is written. */
import { noticeFaults, unstored } from '@garboard/actions/safety-notice/notice-input.ts';
import { NoticeMatches } from '@garboard/contract/safety-notice/answer.ts';
import { NewSafetyNotice } from '@garboard/contract/safety-notice/notice.ts';
import { toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { type NoticeTried, tryNotice } from '@garboard/db/safety-notice/try-notice.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { BODY_PROBLEMS, body, IDEMPOTENCY_KEY, json, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { presentThing } from './present-notice.ts';
import { readNotice } from './read-notice.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/safety-notices/matches',
  operationId: 'matchSafetyNotice',
  tags: ['Safety notices'],
  summary: 'See what a safety notice would bear on',
  description:
    'For every role; the same body as for entering it. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect.',
  'x-reads-only': true,
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewSafetyNotice) },
  responses: { 200: json(NoticeMatches, 'What it covers, may cover and does not cover.'), ...BODY_PROBLEMS },
});

const MOST_SHOWN = 200;
const MOST_OTHERS = 50;

export function matchNoticeRoute(deps: Deps) {
  const middleware = [access(deps, 'read'), ...jsonBody];
  return routes().openapi({ ...route, middleware }, async (c) => {
    const asked = readNotice(c.req.valid('json'));
    const errors = noticeFaults(asked, deps.now());
    if (errors.length > 0) return problem(c, 'invalid', { errors });
    const notice = toNotice(unstored(asked, deps.now()));
    return c.json(presentTried(await read(c, deps, (tx) => tryNotice(tx, notice, MOST_OTHERS))), 200);
  });
}

function presentTried({ hits, others, ruledOut }: NoticeTried): NoticeMatches {
  const told = hits.flatMap(presentHit);
  const affected = told.filter(({ match }) => match === 'affected');
  const unsure = told.filter(({ match }) => match === 'may_be_affected');
  const spared = ruledOut.map(({ vesselId, vesselName, itemId, ruledOut: because, ...thing }) => ({
    vessel: { id: vesselId, name: vesselName },
    item: presentThing({ ...thing, id: itemId }),
    match: 'not_affected' as const,
    because: [...because],
    missing: [],
  }));
  return {
    counts: {
      affected: affected.length,
      mayBeAffected: unsure.length,
      notAffected: others,
      vessels: new Set(hits.map(({ vessel }) => vessel.id)).size,
    },
    items: [...affected, ...unsure, ...spared].slice(0, MOST_SHOWN),
  };
}

function presentHit({ vessel, item, standing }: NoticeTried['hits'][number]): NoticeMatches['items'] {
  if (standing.kind === 'settled') return [];
  const { match } = standing;
  const about = { vessel: { ...vessel }, item: presentThing(item), match: match.kind };
  return match.kind === 'affected'
    ? [{ ...about, because: [...match.because], missing: [] }]
    : [{ ...about, because: [...match.open], missing: match.missing.map(({ what }) => what) }];
}
