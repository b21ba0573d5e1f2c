/** GET /v1/referrals/{referralId}. */
import { Referral } from '@garboard/contract/survey-visit/walk.ts';
import { loadReferral } from '@garboard/db/survey-visit/referrals.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, ReferralPath, routes, SIGNED_IN, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { tellWritten } from '../request/written.ts';
import { presentReferral } from './present-visit.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/referrals/{referralId}',
  operationId: 'getReferral',
  tags: ['Visits'],
  summary: 'Read a referral',
  description: 'With the version that a change of it must name.',
  security: SIGNED_IN,
  request: { params: ReferralPath },
  responses: { 200: versioned(Referral, 'The referral.'), ...READ_ONE_PROBLEMS },
});

export function getReferralRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { referralId } = c.req.valid('param');
    const record = await read(c, deps, (tx) => loadReferral(tx, referralId));
    if (!record) return problem(c, 'not-found');
    tellWritten(c, { version: record.version });
    return c.json(presentReferral(record), 200);
  });
}
