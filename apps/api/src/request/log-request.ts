/** One line a request, without a secret in it. */
import type { Context } from 'hono';
import { createMiddleware } from 'hono/factory';
import { matchedRoutes } from 'hono/route';
import type { ApiEnv, Deps } from '../deps.ts';

export function logRequest(deps: Deps) {
  return createMiddleware<ApiEnv>(async (c, next) => {
    const start = performance.now();
    await next();
    deps.log({
      event: 'request',
      requestId: c.var.requestId,
      method: c.req.method,
      path: templateOf(c),
      status: c.res.status,
      ms: Math.round((performance.now() - start) * 10) / 10,
      actor: c.var.caller?.actor.kind ?? (c.var.person ? 'person' : 'nobody'),
      organisationId: c.var.caller?.organisationId ?? null,
    });
  });
}

/** `/v1/vessels/:vesselId`; what no route answers for has no template. */
function templateOf(c: Context<ApiEnv>): string {
  return matchedRoutes(c).findLast(({ path }) => !path.includes('*'))?.path ?? '(none)';
}
