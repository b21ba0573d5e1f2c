/** What every act on one finding has in common: `If-Match`, the finding as it stands afterwards, what can be refused. */
import type { ActionContext } from '@garboard/actions/context.ts';
import type { At, StepRefusal } from '@garboard/actions/finding/take-step.ts';
import type { Written } from '@garboard/actions/result.ts';
import { Finding } from '@garboard/contract/finding/finding.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { Permission } from '@garboard/domain/organisation/permission.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
  created,
  FindingPath,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentFinding } from './present-finding.ts';

const REFUSALS = problems('not-found', 'conflict', 'stale', 'if-match-required');

type Declared<B extends z.ZodType> = {
  readonly method: 'post' | 'patch';
  readonly path: `/v1/findings/{findingId}${string}`;
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly body: B;
  readonly permission: Permission;
  /** `201`: the act makes a finding of its own, and answers with that one. */
  readonly answers: 200 | 201;
};

type Act<B extends z.ZodType> = (
  ctx: ActionContext,
  at: At,
  said: z.infer<B>,
) => Promise<Written<FindingView, StepRefusal>>;

export function findingAct<B extends z.ZodType>(declared: Declared<B>, act: Act<B>) {
  const { body: shape, permission, answers, description, ...rest } = declared;
  const answer =
    answers === 201
      ? { 201: created(Finding, 'The new finding.') }
      : { 200: changed(Finding, 'The finding as it stands now.') };
  const route = createRoute({
    ...rest,
    tags: ['Findings'],
    description: `${description} \`If-Match\` is required.`,
    security: SIGNED_IN,
    request: {
      params: FindingPath,
      headers: z.object({ ...(rest.method === 'post' && IDEMPOTENCY_KEY), ...IF_MATCH }),
      body: body(shape),
    },
    responses: { ...answer, ...WRITE_PROBLEMS, ...REFUSALS },
  });
  return (deps: Deps) =>
    routes().openapi({ ...route, middleware: [access(deps, permission), ...jsonBody] }, async (c) => {
      const ifMatch = readIfMatch(c.req.header('if-match'));
      if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
      const { findingId } = c.req.valid('param' as never) as z.infer<typeof FindingPath>;
      const said = c.req.valid('json' as never) as z.infer<B>;
      const result = await act(actionContext(c, deps, said), { findingId, expectedVersion: ifMatch.version }, said);
      if (!result.ok) return answerFailure(c, result.failure);
      const { value, replayed } = result;
      tellWritten(c, {
        version: value.version,
        replayed,
        ...(answers === 201 && { location: `/v1/findings/${value.id}` }),
      });
      return c.json(presentFinding(value, deps.now()), answers);
    });
}
