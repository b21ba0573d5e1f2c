/** `If-None-Match`: a reader that already has this version gets 304 and no body. */
import { createMiddleware } from 'hono/factory';
import type { ApiEnv } from '../deps.ts';
import { matchesNone } from './etag.ts';

export const notModified = createMiddleware<ApiEnv>(async (c, next) => {
  await next();
  const etag = c.res.headers.get('etag');
  const asked = c.req.header('if-none-match');
  if (c.req.method !== 'GET' && c.req.method !== 'HEAD') return;
  if (c.res.status !== 200 || etag === null || asked === undefined || !matchesNone(asked, etag)) return;
  const headers = new Headers(c.res.headers);
  headers.delete('content-type');
  headers.delete('content-length');
  c.res = new Response(null, { status: 304, headers });
});
