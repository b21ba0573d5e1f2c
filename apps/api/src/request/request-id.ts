/** `X-Request-Id`: taken over where it is sane, made up where it is not, and sent back. */
import { createMiddleware } from 'hono/factory';
import type { ApiEnv } from '../deps.ts';

export const requestId = createMiddleware<ApiEnv>(async (c, next) => {
  const given = c.req.header('x-request-id') ?? '';
  c.set('requestId', /^[\x21-\x7e]{1,128}$/.test(given) ? given : crypto.randomUUID());
  await next();
  c.header('x-request-id', c.var.requestId);
});
