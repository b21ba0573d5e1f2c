/** /auth/*: signing up and in, as the accounts' library has it. Its answers are its own; who may ask is ours. */
import { ACCOUNTS_PATH } from '@garboard/accounts/paths.ts';
import { bodyLimit } from 'hono/body-limit';
import type { Deps } from '../deps.ts';
import { routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { clientAddress } from '../request/client-address.ts';
import { isSameOrigin } from './same-origin.ts';

const MAX_BYTES = 16 * 1024;

export function authRoute({ accounts }: Deps) {
  const path = `${ACCOUNTS_PATH}/*`;
  const limit = bodyLimit({ maxSize: MAX_BYTES, onError: (c) => problem(c, 'too-large') });
  return routes().on(['GET', 'POST'], path, limit, async (c) => {
    c.header('cache-control', 'no-store');
    if (c.req.method === 'POST' && !isSameOrigin(c)) return problem(c, 'foreign-origin');
    const answer = await accounts?.handle(c.req.raw, clientAddress(c));
    if (!answer) return problem(c, 'not-found');
    const headers = new Headers(answer.headers);
    headers.set('cache-control', 'no-store');
    return new Response(answer.body, { status: answer.status, headers });
  });
}
