/** Which pages of other hosts may call the API from a browser. They bring a key: the cookie is never for them. */
import { cors } from 'hono/cors';
import { createMiddleware } from 'hono/factory';
import type { ApiEnv, Deps } from '../deps.ts';

const ASKED = ['Authorization', 'Content-Type', 'If-Match', 'If-None-Match', 'Idempotency-Key', 'X-Request-Id'];
const TOLD = [
  ...['ETag', 'Link', 'Location', 'Idempotency-Replayed', 'X-Request-Id'],
  ...['Retry-After', 'RateLimit', 'RateLimit-Policy'],
];
const TEN_MINUTES = 600;

export function otherOrigins({ corsOrigins = [] }: Deps) {
  if (corsOrigins.length === 0) return createMiddleware<ApiEnv>((_, next) => next());
  return cors({
    origin: [...corsOrigins],
    allowMethods: ['GET', 'POST', 'PUT', 'PATCH', 'DELETE'],
    allowHeaders: ASKED,
    exposeHeaders: TOLD,
    maxAge: TEN_MINUTES,
  });
}
