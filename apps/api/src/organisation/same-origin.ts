/**
 * Whether a browser's request came from our own pages. A cookie travels with requests that other sites
 * make; a header that pages cannot set tells them apart.
 */
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';

export function isSameOrigin(c: Context<ApiEnv>): boolean {
  const site = c.req.header('sec-fetch-site');
  if (site !== undefined) return site === 'same-origin';
  const origin = c.req.header('origin');
  return origin !== undefined && hostOf(origin) === (c.req.header('host') ?? new URL(c.req.url).host);
}

function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
