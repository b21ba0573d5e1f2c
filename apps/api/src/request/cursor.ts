/**
 * Where a page ends. The text is opaque, and bound to the question it was given for: with other filters it
 * would point at a place in another list.
 */
import { createHash } from 'node:crypto';
import type { z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { problem } from '../problem/problem.ts';

/** Everything that decides which list it is: the path, the filters, the day. */
export type Question = Readonly<Record<string, unknown>>;

export type Start<Key> = { readonly ok: true; readonly after?: Key } | { readonly ok: false };

export function readCursor<Key>(text: string | undefined, question: Question, shape: z.ZodType<Key>): Start<Key> {
  if (text === undefined) return { ok: true };
  const parsed = parse(text);
  if (!Array.isArray(parsed) || parsed.length !== 2 || parsed[0] !== digest(question)) return { ok: false };
  const key = shape.safeParse(parsed[1]);
  return key.success ? { ok: true, after: key.data } : { ok: false };
}

/** The cursor after `key`, also told in the `Link` header; `null` and no header when nothing follows. */
export function nextCursor(c: Context<ApiEnv>, question: Question, key: unknown): string | null {
  if (key === undefined) return null;
  const cursor = Buffer.from(JSON.stringify([digest(question), key])).toString('base64url');
  const url = new URL(c.req.url);
  url.searchParams.set('cursor', cursor);
  c.header('link', `<${url.pathname}${url.search}>; rel="next"`);
  return cursor;
}

export const badCursor = (c: Context<ApiEnv>) =>
  problem(c, 'invalid', {
    errors: [{ pointer: '#query/cursor', detail: 'must be the nextCursor of the same list with the same filters' }],
  });

function digest(question: Question): string {
  return createHash('sha256').update(JSON.stringify(question)).digest('base64url').slice(0, 12);
}

function parse(text: string): unknown {
  try {
    return JSON.parse(Buffer.from(text, 'base64url').toString());
  } catch {
    return null;
  }
}
