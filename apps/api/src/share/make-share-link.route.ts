/** POST /v1/share-links: a link for an outsider. */
import { makeShareLink } from '@garboard/actions/share/make-share-link.ts';
import { NewShareLink, ShareLinkWithText } from '@garboard/contract/share/share-link.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { body, created, IDEMPOTENCY_KEY, routes, SIGNED_IN, WRITE_PROBLEMS } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { toVessels } from '../organisation/present-people.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentLinkWithText } from './present-share.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/share-links',
  operationId: 'makeShareLink',
  tags: ['Links for outsiders'],
  summary: 'Show vessels or the due list to an outsider',
  description:
    'Whoever has the link sees the particulars of these vessels and what is due aboard, as it stands when they look, and nothing else; without `vesselIds` that of the whole fleet. A link for a yard shows the work it is given instead and reports it done; a link for the owner of one vessel also says yes or no to estimates. For `owner` and `manager`. The answer tells the text, this once.',
  security: SIGNED_IN,
  request: { headers: z.object(IDEMPOTENCY_KEY), body: body(NewShareLink) },
  responses: { 201: created(ShareLinkWithText, 'The link, with its text.'), ...WRITE_PROBLEMS },
});

export function makeShareLinkRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'share'), ...jsonBody] }, async (c) => {
    const asked = c.req.valid('json');
    const { label, vesselIds, showsValue, purpose, findingIds = [], expiresAt } = asked;
    const wanted = {
      label,
      showsValue,
      purpose,
      findingIds,
      vesselIds: toVessels(vesselIds),
      expiresAt: new Date(expiresAt),
    };
    const result = await makeShareLink(actionContext(c, deps, asked), wanted);
    if (!result.ok) return answerFailure(c, result.failure);
    const { id, version } = result.value.link;
    tellWritten(c, { location: `/v1/share-links/${id}`, version, replayed: result.replayed });
    return c.json(presentLinkWithText(result.value), 201);
  });
}
