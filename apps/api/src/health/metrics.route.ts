/**
 * GET /metrics: counts for a supervisor, in the text format of Prometheus. They are of the whole server, so that no
 * organisation's key opens them, only the token that the host was started with. No operation of the API's document.
 */
import { createHash, timingSafeEqual } from 'node:crypto';
import type { Deps } from '../deps.ts';
import { routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';

export function metricsRoute({ metrics }: Deps) {
  return routes().get('/metrics', async (c) => {
    if (!metrics) return problem(c, 'not-found');
    if (!isToken(c.req.header('authorization') ?? '', metrics.token))
      return problem(c, 'unauthenticated', { headers: { 'www-authenticate': 'Bearer realm="metrics"' } });
    return c.body(await metrics.counts.text(), 200, {
      'cache-control': 'no-store',
      'content-type': metrics.counts.contentType,
    });
  });
}

/** Compared by their hashes, so that neither length nor beginning shows in the time it takes. */
function isToken(authorization: string, token: string): boolean {
  const hash = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(hash(authorization), hash(`Bearer ${token}`));
}
