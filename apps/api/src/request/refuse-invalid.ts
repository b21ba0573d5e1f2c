/** Answers a request that does not fit its schema with every fault at once, those of its headers included. */
import type { Fault } from '@garboard/contract/problem.ts';
import type { Hook } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { faultsOf } from '../problem/faults-of.ts';
import { problem } from '../problem/problem.ts';
import { readIfMatch } from './etag.ts';
import { readIdempotencyKey } from './idempotency-key.ts';

/** Headers are declared as plain texts, so that theirs and the body's faults come in one answer. */
export const refuseInvalid: Hook<unknown, ApiEnv, string, Response | undefined> = (result, c) => {
  if (result.target === 'header') return undefined;
  if (result.target === 'param') return result.success ? undefined : problem(c, 'not-found');
  const faults = result.success ? [] : faultsOf(result.target, result.error.issues);
  if (result.target === 'json') faults.push(...headerFaults(c));
  return faults.length > 0 ? problem(c, 'invalid', { errors: faults }) : undefined;
};

function headerFaults(c: Context<ApiEnv>): Fault[] {
  const faults: Fault[] = [];
  const key = c.req.header('idempotency-key');
  if (key !== undefined && readIdempotencyKey(key) === null) {
    faults.push({
      pointer: '#header/Idempotency-Key',
      detail: 'must be 1 to 255 visible ASCII characters, quoted or bare',
    });
  }
  if (readIfMatch(c.req.header('if-match')).kind === 'unreadable') {
    faults.push({ pointer: '#header/If-Match', detail: 'must be the one ETag that was read, such as "3"' });
  }
  return faults;
}
