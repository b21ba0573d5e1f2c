/** What every addition to an open visit has in common: no version to name, one new thing in the answer. */
import type { ActionContext } from '@garboard/actions/context.ts';
import type { Written } from '@garboard/actions/result.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  IDEMPOTENCY_KEY,
  listed,
  problems,
  routes,
  SIGNED_IN,
  VisitPath,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';

type Declared<Asked extends z.ZodType, Told extends z.ZodType> = {
  readonly path: `/v1/visits/{visitId}/${string}`;
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly body: Asked;
  readonly answer: Told;
};

/** Nothing of it names a version, so nothing of it is ever stale. */
type Act<Asked extends z.ZodType, Record> = (
  ctx: ActionContext,
  visitId: string,
  said: z.infer<Asked>,
) => Promise<Written<Record, 'not_found' | 'conflict' | 'invalid' | 'stale'>>;

export function visitAddition<Asked extends z.ZodType, Told extends z.ZodType, Record>(
  declared: Declared<Asked, Told>,
  act: Act<Asked, Record>,
  present: (record: Record) => z.infer<Told>,
) {
  const { body: shape, answer, ...rest } = declared;
  const route = createRoute({
    ...rest,
    method: 'post',
    tags: ['Visits'],
    security: SIGNED_IN,
    request: { params: VisitPath, headers: z.object(IDEMPOTENCY_KEY), body: body(shape) },
    responses: { 201: listed(answer, 'As written.'), ...WRITE_PROBLEMS, ...problems('not-found', 'conflict') },
  });
  return (deps: Deps) =>
    routes().openapi({ ...route, middleware: [access(deps, 'survey'), ...jsonBody] }, async (c) => {
      const { visitId } = c.req.valid('param' as never) as z.infer<typeof VisitPath>;
      const said = c.req.valid('json' as never) as z.infer<Asked>;
      const result = await act(actionContext(c, deps, said), visitId, said);
      if (!result.ok) {
        if (result.failure.kind === 'stale') throw new Error('an addition names no version');
        return answerFailure(c, result.failure);
      }
      tellWritten(c, { location: `/v1/visits/${visitId}/walk`, replayed: result.replayed });
      return c.json(present(result.value) as never, 201);
    });
}
