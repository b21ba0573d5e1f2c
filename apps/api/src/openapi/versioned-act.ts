/** What every act on one thing that exists has in common: `If-Match`, and the thing as it stands afterwards. */
import type { ActionContext } from '@garboard/actions/context.ts';
import type { Written } from '@garboard/actions/result.ts';
import type { Permission } from '@garboard/domain/organisation/permission.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import {
  body,
  changed,
  created,
  IDEMPOTENCY_KEY,
  IF_MATCH,
  problems,
  routes,
  SIGNED_IN,
  WRITE_PROBLEMS,
} from './declare.ts';

export type DeclaredAct<Asked extends z.ZodType> = {
  readonly method: 'post' | 'patch';
  /** With one parameter: the id of the thing. */
  readonly path: string;
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly permission: Permission;
  readonly body: Asked;
};

export type Act<Asked extends z.ZodType, Record> = (
  ctx: ActionContext,
  id: string,
  expectedVersion: number,
  said: z.infer<Asked>,
) => Promise<Written<Record, 'not_found' | 'conflict' | 'invalid' | 'stale'>>;

/** How the thing is asked for and told. */
type Thing<Told extends z.ZodType, Record> = {
  readonly tags: string[];
  readonly params: z.ZodObject;
  readonly answer: Told;
  readonly inWords: string;
  readonly present: (record: Record, now: Date) => z.infer<Told>;
  /** Where the thing that the act has made is read: then it answers 201. */
  readonly madeAt?: (record: Record) => string;
};

export function versionedAct<
  Asked extends z.ZodType,
  Told extends z.ZodType,
  Record extends { readonly version: number },
>(declared: DeclaredAct<Asked>, thing: Thing<Told, Record>, act: Act<Asked, Record>) {
  const { body: shape, permission, description, ...rest } = declared;
  const { tags, params, answer, inWords, present, madeAt } = thing;
  const route = createRoute({
    ...rest,
    tags,
    description: `${description} \`If-Match\` is required.`,
    security: SIGNED_IN,
    request: {
      params,
      headers: z.object({ ...(rest.method === 'post' && IDEMPOTENCY_KEY), ...IF_MATCH }),
      body: body(shape),
    },
    responses: {
      ...(madeAt ? { 201: created(answer, inWords) } : { 200: changed(answer, inWords) }),
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
      const { value, replayed } = result;
      tellWritten(c, { version: value.version, replayed, ...(madeAt && { location: madeAt(value) }) });
      return c.json(present(value, deps.now()) as never, madeAt ? 201 : 200);
    });
}
