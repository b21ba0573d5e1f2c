/** A body that is bytes and nothing else: a piece of a file. */
import { createMiddleware } from 'hono/factory';
import type { ApiEnv } from '../deps.ts';
import { atMost, readBytes } from './body-bytes.ts';
import { MAX_PIECE_BYTES } from './limits.ts';

export const OCTETS = 'application/octet-stream';
const KIND = { type: /^application\/octet-stream\s*$/i, accept: OCTETS };

/** The bytes are read before the route asks for them: it finds them with `c.req.arrayBuffer()`. */
const read = createMiddleware<ApiEnv>(async (c, next) => {
  const body = await readBytes(c, KIND);
  return body.ok ? next() : body.answer;
});

export const octetBody = [atMost(MAX_PIECE_BYTES), read];
