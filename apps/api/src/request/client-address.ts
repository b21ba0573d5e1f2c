/** Where a request came from: the other end of the connection, and nothing that a client can claim. */
import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';

/** Empty where there is no connection, as in tests in memory. */
export function clientAddress(c: Context<ApiEnv>): string {
  const env: unknown = c.env;
  return typeof env === 'object' && env !== null && 'incoming' in env ? (getConnInfo(c).remote.address ?? '') : '';
}
