/** The headers of an answer to a write. */
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { etagOf } from './etag.ts';

type Written = { readonly location?: string; readonly version?: number; readonly replayed?: boolean | undefined };

export function tellWritten(c: Context<ApiEnv>, { location, version, replayed }: Written): void {
  if (location !== undefined) c.header('location', location);
  if (version !== undefined) c.header('etag', etagOf(version));
  if (replayed) c.header('idempotency-replayed', 'true');
}
