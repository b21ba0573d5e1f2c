/** What every body goes through before anybody looks into it: how long it may be, of which kind, and whether it came whole. */
import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { createMiddleware } from 'hono/factory';
import type { ApiEnv } from '../deps.ts';
import { problem } from '../problem/problem.ts';

/** Answered before the body was read to its end, so nothing more can follow on this connection: say so. */
const UNREAD = { connection: 'close' };

/** Whoever sent it is gone, or is too slow for the host: nobody may hear this. */
const cutOff = (c: Context<ApiEnv>) => problem(c, 'came-too-slowly', { headers: UNREAD });

export function atMost(maxBytes: number) {
  const counted = bodyLimit({
    maxSize: maxBytes,
    onError: (c: Context<ApiEnv>) => problem(c, 'too-large', { headers: UNREAD }),
  });
  // What a route throws is caught nearer to it: only the reading of a body fails here.
  return createMiddleware<ApiEnv>(async (c, next) => {
    try {
      return await counted(c, next);
    } catch {
      return cutOff(c);
    }
  });
}

export type Kind = { readonly type: RegExp; readonly accept: string };
export type Read =
  | { readonly ok: true; readonly bytes: ArrayBuffer }
  | { readonly ok: false; readonly answer: Response };

/** The whole body as it came, if it is of that kind and not compressed. */
export async function readBytes(c: Context<ApiEnv>, { type, accept }: Kind): Promise<Read> {
  if (!type.test(c.req.header('content-type') ?? '') || c.req.header('content-encoding')) {
    const headers = { ...UNREAD, accept, 'accept-encoding': 'identity' };
    return { ok: false, answer: problem(c, 'unsupported-media-type', { headers }) };
  }
  const bytes = await c.req.arrayBuffer().catch(() => null);
  return bytes ? { ok: true, bytes } : { ok: false, answer: cutOff(c) };
}
