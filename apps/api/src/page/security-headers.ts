/** What a browser may do with our pages: load from here, and nothing else. */
import { secureHeaders } from 'hono/secure-headers';
import type { Deps } from '../deps.ts';

export function securityHeaders({ accounts }: Deps) {
  return secureHeaders({
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
}
