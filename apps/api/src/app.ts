/** The API as one Hono app: no environment, no clock, no socket. Tests use it as it is; the host puts it on a port. */
import { tookTooLong } from '@garboard/db/took-too-long.ts';
import { compress } from 'hono/compress';
import { HTTPException } from 'hono/http-exception';
import { methodNotAllowed } from 'hono/method-not-allowed';
import type { Deps } from './deps.ts';
import { metricsRoute } from './health/metrics.route.ts';
import { routes } from './openapi/declare.ts';
import { openApiRoute } from './openapi/openapi.route.ts';
import { OPERATIONS } from './operations.ts';
import { authRoute } from './organisation/auth.route.ts';
import { outboxRoute } from './organisation/outbox.route.ts';
import { signInRoute } from './organisation/sign-in.route.ts';
import { docsRoute } from './page/docs.route.ts';
import { pageStyleRoute } from './page/page-style.route.ts';
import { securityHeaders } from './page/security-headers.ts';
import { problem } from './problem/problem.ts';
import { problemPagesRoute } from './problem/problem-pages.route.ts';
import { logRequest } from './request/log-request.ts';
import { notModified } from './request/not-modified.ts';
import { otherOrigins } from './request/other-origins.ts';
import { rateLimit } from './request/rate-limit.ts';
import { requestId } from './request/request-id.ts';
import { dashboard } from './static/dashboard.ts';

export function createApp(deps: Deps) {
  const app = routes();
  app.use(requestId, logRequest(deps), securityHeaders(deps), notModified);
  app.use('/v1/*', otherOrigins(deps), rateLimit(deps));
  app.use('/assets/*', compress()).use('/docs/*', compress());
  app.use(
    methodNotAllowed({
      app,
      onMethodNotAllowed: (c, methods) => problem(c, 'method-not-allowed', { headers: { allow: methods.join(', ') } }),
    }),
  );
  for (const operation of OPERATIONS) app.route('/', operation(deps));
  for (const page of [
    docsRoute(),
    pageStyleRoute(),
    problemPagesRoute(),
    signInRoute(deps),
    authRoute(deps),
    outboxRoute(deps),
    metricsRoute(deps),
    openApiRoute(app, deps),
  ])
    app.route('/', page);
  const dashboardFile = dashboard(deps.dashboardDir);
  app.notFound(async (c) => (await dashboardFile(c)) ?? problem(c, 'not-found'));
  app.onError((error, c) => {
    if (error instanceof HTTPException && error.status === 415) return problem(c, 'unsupported-media-type');
    deps.log({ event: 'fault', requestId: c.var.requestId, error });
    if (tookTooLong(error)) return problem(c, 'timed-out', { headers: { 'retry-after': '5' } });
    return problem(c, 'fault');
  });
  return app;
}
