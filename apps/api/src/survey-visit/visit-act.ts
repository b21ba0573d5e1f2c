/** What every change of one thing of a visit has in common: `If-Match`, and the thing as it stands afterwards. */
import type { ActionContext } from '@garboard/actions/context.ts';
import type { Written } from '@garboard/actions/result.ts';
import type { Permission } from '@garboard/domain/organisation/permission.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  changed,
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

type Declared<Asked extends z.ZodType, Told extends z.ZodType> = {
  readonly method: 'post' | 'patch';
  readonly path: string;
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly params: z.ZodObject;
  readonly permission: Permission;
  readonly body: Asked;
  readonly answer: Told;
};
type Act<Asked extends z.ZodType, Record> = (
  ctx: ActionContext,
  id: string,
  expectedVersion: number,
  said: z.infer<Asked>,
) => Promise<Written<Record, 'not_found' | 'conflict' | 'invalid' | 'stale'>>;

export function visitAct<Asked extends z.ZodType, Told extends z.ZodType, Record extends { readonly version: number }>(
  declared: Declared<Asked, Told>,
  act: Act<Asked, Record>,
  present: (record: Record) => z.infer<Told>,
) {
  const { body: shape, answer, params, permission, description, ...rest } = declared;
  const route = createRoute({
    ...rest,
    tags: ['Visits'],
    description: `${description} \`If-Match\` is required.`,
    security: SIGNED_IN,
    request: {
      params,
      headers: z.object({ ...(rest.method === 'post' && IDEMPOTENCY_KEY), ...IF_MATCH }),
      body: body(shape),
    },
    responses: {
      200: changed(answer, 'As it stands now.'),
      ...WRITE_PROBLEMS,
      ...problems('not-found', 'conflict', 'stale', 'if-match-required'),
    },
  });
  return (deps: Deps) =>
    routes().openapi({ ...route, middleware: [access(deps, permission), ...jsonBody] }, async (c) => {
      const ifMatch = readIfMatch(c.req.header('if-match'));
      if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
      const [id = ''] = Object.values(c.req.valid('param' as never) as { [name: string]: string });
      const said = c.req.valid('json' as never) as z.infer<Asked>;
      const result = await act(actionContext(c, deps, said), id, ifMatch.version, said);
      if (!result.ok) return answerFailure(c, result.failure);
      tellWritten(c, { version: result.value.version, replayed: result.replayed });
      return c.json(present(result.value) as never, 200);
    });
}
