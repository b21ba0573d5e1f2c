/** `Idempotency-Key`: a repeat of the same request has one effect and gets the same answer. */
import { createHash } from 'node:crypto';
import type { Once } from '@garboard/actions/context.ts';
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';

const BARE = /^[\x21\x23-\x7e]{1,255}$/;
const QUOTED = /^"((?:[\x20\x21\x23-\x5b\x5d-\x7e]|\\["\\]){1,255})"$/;

/** A structured-field string (`"abc"`) or the bare text; `null` when it is neither. */
export function readIdempotencyKey(header: string): string | null {
  const quoted = QUOTED.exec(header)?.[1];
  if (quoted !== undefined) return quoted.replaceAll(/\\(["\\])/g, '$1');
  return BARE.test(header) ? header : null;
}

/** The request's key with a hash of what was asked, for the action to claim. */
export function onceOf(c: Context<ApiEnv>, body: unknown): { once: Once } | Record<never, never> {
  const header = c.req.header('idempotency-key');
  const key = header === undefined ? null : readIdempotencyKey(header);
  if (key === null) return {};
  const asked = JSON.stringify([c.req.method, c.req.path, c.req.header('if-match') ?? null, body]);
  return { once: { key, fingerprint: createHash('sha256').update(asked).digest() } };
}
