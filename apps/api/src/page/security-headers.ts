/** What a browser may do with our pages: load from here, and nothing else. */
import { createMiddleware } from 'hono/factory';
import { secureHeaders } from 'hono/secure-headers';
import type { Deps } from '../deps.ts';

/** A route that answers with what somebody sent in shuts it in further than our own pages. */
const POLICY = 'content-security-policy';

export function securityHeaders({ accounts }: Deps) {
  const headers = secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'self'"],
      imgSrc: ["'self'", 'data:'],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
    xFrameOptions: 'DENY',
    referrerPolicy: 'no-referrer',
    strictTransportSecurity: accounts?.cookie.secure ?? false,
  });
  return createMiddleware(async (c, next) => {
    // What a fleet's house shows is for those who were let in or given a link, never for a search engine.
    c.header('x-robots-tag', 'noindex, nofollow');
    let stricter: string | null = null;
    await headers(c, async () => {
      await next();
      stricter = c.res.headers.get(POLICY);
    });
    if (stricter !== null) c.res.headers.set(POLICY, stricter);
  });
}
